package exergue;

/** Is told what the pipeline is at. */
@FunctionalInterface
public interface Progress {

    Progress SILENT = stage -> { };

    void starts(Stage stage);
}
