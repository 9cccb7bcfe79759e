package exergue.cli;

import exergue.files.Delivery;
import exergue.source.tidy.Tidy;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the entries of a folder in one layout. */
@Command(name = "tidy", description = "Writes the entries of a source folder in one layout, so that only what is meant differs "
        + "between two states. No value changes and no comment is lost.")
final class TidyCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "SOURCE", arity = "0..1", defaultValue = ".",
            description = "Folder that holds catalogue.yaml. Default: the folder you are in.")
    private Path source;

    @Option(names = "--check", description = "Writes nothing, names the files that are not tidy, and ends with 1 if there are any.")
    private boolean check;

    TidyCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Tidy.Tidied tidied = Tidy.of(SourceFolder.open(source));
        if (!check && !tidied.rewritten().isEmpty()) {
            try (Delivery delivery = new Delivery(source)) {
                for (Map.Entry<String, byte[]> file : tidied.rewritten().entrySet()) {
                    delivery.write(file.getKey(), file.getValue());
                }
                delivery.deliver();
            }
        }
        tidied.rewritten().keySet().forEach(file -> terminal.out().println(file + (check ? ": not tidy" : ": tidied")));
        tidied.leftAlone().forEach(one -> terminal.out().println(one.file() + ": left as it is. " + one.why()));
        String files = HowMany.count(tidied.rewritten().size(), "file");
        terminal.out().println(source + ": " + (tidied.rewritten().isEmpty() ? tidied.leftAlone().isEmpty() ? "everything is tidy" : "the rest is tidy" : files
                + (check ? " not tidy" : " tidied")) + (tidied.leftAlone().isEmpty() ? "" : ", " + tidied.leftAlone().size() + " left as found"));
        boolean allIsWell = tidied.leftAlone().isEmpty() && (tidied.rewritten().isEmpty() || !check);
        return allIsWell ? ExitCode.CLEAN : ExitCode.SOURCE_ERRORS;
    }
}
