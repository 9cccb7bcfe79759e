package exergue.cli;

import exergue.files.Delivery;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lays out a small catalogue that typesets at once, with comments that teach. */
@Command(name = "start", description = "Lays out a small catalogue to begin with. Never overwrites anything.")
final class StartCommand implements Callable<Integer> {

    /** Every file of the small catalogue, as it lies under {@code exergue/start/} among the resources. */
    static final List<String> FILES = List.of(
            "catalogue.yaml", "house-style.yaml", "conventions.yaml", "works.yaml", "mints.yaml", "rulers.yaml",
            "collections.yaml", "types/wheel-drachm.yaml", "types/wheel-obol.yaml", "types/bull-bronze.yaml",
            "coins/ov-1.yaml", "coins/ov-2.yaml", "coins/ov-3.yaml", "coins/ov-4.yaml", "coins/ov-5.yaml",
            "coins/ov-6.yaml", "coins/ov-7.yaml", "coins/ov-8.yaml", "chapters/introduction.md");

    private final Terminal terminal;

    @Parameters(paramLabel = "DIR", description = "Folder for the new catalogue; it is made if it is not there.")
    private Path folder;

    StartCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        try (Delivery delivery = new Delivery(folder)) {
            for (String file : FILES) {
                delivery.writeNew(file, resource(file));
            }
            delivery.deliver();
        } catch (FileAlreadyExistsException e) {
            throw new UsageException("“" + e.getFile() + "” is already there, and start never overwrites anything. "
                    + "Name a new folder.");
        }
        terminal.out().println(folder + ": a catalogue of 8 coins in 3 types. Open catalogue.yaml to begin; "
                + "make the book with: java -jar exergue.jar typeset " + folder);
        return ExitCode.CLEAN;
    }

    private static byte[] resource(String file) throws IOException {
        try (InputStream in = StartCommand.class.getResourceAsStream("/exergue/start/" + file)) {
            if (in == null) {
                throw new FileNotFoundException("exergue/start/" + file);
            }
            return in.readAllBytes();
        }
    }
}
