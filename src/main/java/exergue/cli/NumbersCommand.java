package exergue.cli;

import exergue.Exergue;
import exergue.Exergue.Checked;
import exergue.cli.report.Report;
import exergue.edition.DataRows;
import exergue.edition.PageMap;
import exergue.exchange.BookData;
import exergue.exchange.BookNumbers;
import exergue.exchange.FormerNumbersYaml;
import exergue.files.Delivery;
import exergue.files.FolderTree;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
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

    @Option(names = "--of", paramLabel = "BOOK", description = "Folder of a book that was made before: keeps the numbers in "
            + "its catalogue.csv in place of those of today.")
    private Path book;

    @Mixin
    private FormatOption format;

    NumbersCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (book != null) {
            return write(numbersOfBook());
        }
        try (StageLines progress = new StageLines(terminal)) {
            Checked checked = Exergue.check(SourceFolder.open(source), progress);
            if (checked.findings().hasErrors() || checked.catalogue().isEmpty() || checked.book().isEmpty()) {
                format.print(new Report(checked.findings(), checked.source(), source.toString()),
                        "No numbers were written: " + HowMany.of(checked.findings()) + ".", terminal);
                return ExitCode.SOURCE_ERRORS;
            }
            return write(BookNumbers.of(DataRows.of(checked.catalogue().get(), checked.book().get(), PageMap.UNKNOWN)));
        }
    }

    private BookNumbers numbersOfBook() throws IOException {
        FolderTree folder = new FolderTree(book);
        Optional<BookNumbers> numbers = folder.has(BookData.CSV)
                ? BookNumbers.fromCsv(new String(folder.read(BookData.CSV), StandardCharsets.UTF_8)) : Optional.empty();
        return numbers.orElseThrow(() -> new UsageException("“" + book + "” has no " + BookData.CSV + " with the columns id and number. "
                + "Name the folder into which typeset wrote the book."));
    }

    private int write(BookNumbers numbers) throws IOException {
        byte[] yaml = FormerNumbersYaml.of(Optional.ofNullable(edition), numbers).getBytes(StandardCharsets.UTF_8);
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
        terminal.out().println(source.resolve(FILE) + ": " + HowMany.count(numbers.byCoin().size(), "number"));
        return ExitCode.CLEAN;
    }
}
