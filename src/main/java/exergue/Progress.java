package exergue;

/** Is told what the pipeline is at. */
@FunctionalInterface
public interface Progress {

    Progress SILENT = stage -> { };

    void starts(Stage stage);

    /**
     * How far the stage has come, where it takes long enough to tell.
     *
     * @param of how much there is to do; 0 while that is not known
     */
    default void reached(String step, int done, int of) { }
}
