package exergue.cli;

import exergue.Exergue;
import exergue.Exergue.Checked;
import exergue.cli.report.Report;
import exergue.edition.DataRow;
import exergue.edition.DataRows;
import exergue.edition.PageMap;
import exergue.exchange.FormerNumbersYaml;
import exergue.files.Delivery;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Keeps the numbers of an edition for the concordance of the next. */
@Command(name = "numbers", description = "Keeps the catalogue numbers of this edition: writes former-numbers.yaml into "
        + "SOURCE, from which the next edition makes its concordance of old and new numbers. Run it when the book has "
        + "gone to print.")
final class NumbersCommand implements Callable<Integer> {

    static final String FILE = "former-numbers.yaml";

    private final Terminal terminal;

    @Parameters(paramLabel = "SOURCE", arity = "0..1", defaultValue = ".",
            description = "Folder that holds catalogue.yaml. Default: the folder you are in.")
    private Path source;

    @Option(names = "--edition", paramLabel = "WORDS", description = "What the edition is called, as printed over the "
            + "concordance: “First edition, 2026”.")
    private String edition;

    @Option(names = "--replace", description = "Replaces the numbers of the edition before.")
    private boolean replace;

    @Mixin
    private FormatOption format;

    NumbersCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        try (StageLines progress = new StageLines(terminal)) {
            Checked checked = Exergue.check(SourceFolder.open(source), progress);
            if (checked.findings().hasErrors() || checked.catalogue().isEmpty() || checked.book().isEmpty()) {
                format.print(new Report(checked.findings(), checked.source(), source.toString()),
                        "No numbers were written: " + HowMany.of(checked.findings()) + ".", terminal);
                return ExitCode.SOURCE_ERRORS;
            }
            return write(DataRows.of(checked.catalogue().get(), checked.book().get(), PageMap.UNKNOWN));
        }
    }

    private int write(List<DataRow> rows) throws IOException {
        byte[] yaml = FormerNumbersYaml.of(Optional.ofNullable(edition), rows).getBytes(StandardCharsets.UTF_8);
        try (Delivery delivery = new Delivery(source)) {
            if (replace) {
                delivery.write(FILE, yaml);
            } else {
                delivery.writeNew(FILE, yaml);
            }
            delivery.deliver();
        } catch (FileAlreadyExistsException e) {
            throw new UsageException("“" + e.getFile() + "” is already there, with the numbers of an edition before. "
                    + "If the book that is in print has the numbers of today, replace it with --replace.");
        }
        terminal.out().println(source.resolve(FILE) + ": " + HowMany.count(rows.size(), "number"));
        return ExitCode.CLEAN;
    }
}
