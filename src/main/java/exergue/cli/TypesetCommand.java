package exergue.cli;

import exergue.Exergue;
import exergue.Exergue.Checked;
import exergue.Exergue.Made;
import exergue.Exergue.Publication;
import exergue.Prints;
import exergue.cli.report.Report;
import exergue.exchange.BookData;
import exergue.exchange.BookNumbers;
import exergue.exchange.CoinLinkedData;
import exergue.files.Cache;
import exergue.files.Delivery;
import exergue.files.GitCommit;
import exergue.finding.Findings;
import exergue.typeset.Attachment;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** From the source folder to the book and its data. */
@Command(name = "typeset", description = "Makes the book: catalogue.pdf, and its data as catalogue.json and "
        + "catalogue.csv. If the source has errors, nothing is written and the last book stays as it is.")
final class TypesetCommand implements Callable<Integer> {

    /** Folder of the book inside the source, if no other is named. */
    static final String BOOK = "book";
    static final String PDF = "catalogue.pdf";
    static final String PRESS_PDF = "catalogue-press.pdf";

    static final String RENUMBERED = "renumbered.csv";

    static final String WEB = "web";
    /** Names the files in it; a folder that has one is no part of a source. */
    static final String WEB_LIST = "made-by-exergue.txt";

    private final Terminal terminal;

    @Parameters(paramLabel = "SOURCE", arity = "0..1", defaultValue = ".",
            description = "Folder that holds catalogue.yaml. Default: the folder you are in.")
    private Path source;

    @Option(names = "--to", paramLabel = "DIR",
            description = "Folder the book is written to. Default: the folder “book” inside SOURCE.")
    private Path to;

    @Option(names = "--press",
            description = "Makes also catalogue-press.pdf for the printer: bleed, crop marks, pure black; and says what "
                    + "a printer would ask about.")
    private boolean press;

    @Option(names = "--web",
            description = "Makes also the folder web: the same book for a browser, one page a coin. Open web/index.html; "
                    + "no server is needed.")
    private boolean web;

    @Option(names = "--commit", paramLabel = "NAME",
            description = "State of the source that the book names as its origin. Default: the commit that SOURCE is at, "
                    + "if it lies in a Git repository; changes made since that commit are in the book, but not in the "
                    + "name.")
    private String commit;

    @Mixin
    private CacheOption kept;

    @Mixin
    private FormatOption format;

    TypesetCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Path folder = to == null ? source.resolve(BOOK) : to;
        try (StageLines progress = new StageLines(terminal)) {
            Cache cache = kept.beside(folder);
            Checked checked = Exergue.check(SourceFolder.open(source, cache), progress);
            checked = Exergue.pictures(checked, CacheOption.darkroom(cache), progress);
            return checked.findings().hasErrors()
                    ? stopped(checked, checked.findings(), folder) : typeset(checked, folder, progress);
        }
    }

    private int typeset(Checked checked, Path folder, StageLines progress) throws IOException {
        try (Delivery delivery = new Delivery(folder)) {
            Optional<String> origin = commit == null ? GitCommit.of(source) : Optional.of(commit).filter(c -> !c.isBlank());
            Made made;
            try (OutputStream pdf = delivery.write(PDF);
                    OutputStream pressPdf = press ? delivery.write(PRESS_PDF) : null) {
                made = Exergue.typeset(checked, BookData.enclosed(origin),
                        new Prints(pdf, Optional.ofNullable(pressPdf)), progress);
            }
            if (made.publication().isEmpty()) {
                return stopped(checked, made.findings(), folder);
            }
            Publication publication = made.publication().get();
            int renumbered = renumber(BookNumbers.of(publication.rows()), delivery);
            for (Attachment file : publication.data()) {
                delivery.write(file.name(), file.bytes());
            }
            Findings findings = made.findings();
            if (web) {
                findings = findings.and(Exergue.web(checked, publication, CoinLinkedData::of,
                        (path, bytes) -> delivery.write(WEB + "/" + path, bytes), progress));
                if (findings.hasErrors()) {
                    return stopped(checked, findings, folder);
                }
                delivery.writeList(WEB, WEB_LIST);
            }
            delivery.deliver();
            print(checked, findings, lastLine(publication, findings, folder) + renumbered(renumbered));
            return ExitCode.CLEAN;
        }
    }

    private static String lastLine(Publication publication, Findings findings, Path folder) {
        return PDF + ": " + HowMany.count(publication.pages(), "page") + ", " + HowMany.count(publication.rows().size(), "entry")
                + ", " + HowMany.of(findings) + ", in " + folder;
    }

    private static String renumbered(int coins) {
        return coins == 0 ? "" : "\n" + RENUMBERED + ": old and new numbers; " + HowMany.count(coins, "coin")
                + " had another number in the book that lay there before";
    }

    /** Writes old and new numbers side by side where the book before this one had others. @return how many are others */
    private static int renumber(BookNumbers numbers, Delivery delivery) throws IOException {
        Optional<BookNumbers> before = delivery.last(BookData.CSV)
                .flatMap(csv -> BookNumbers.fromCsv(new String(csv, StandardCharsets.UTF_8)));
        int changed = before.map(numbers::changedSince).orElse(0);
        if (changed > 0) {
            delivery.write(RENUMBERED, numbers.concordanceFrom(before.get()).getBytes(StandardCharsets.UTF_8));
        }
        return changed;
    }

    private int stopped(Checked checked, Findings findings, Path folder) {
        print(checked, findings, "No book was made: " + HowMany.of(findings) + ". Nothing was written to " + folder + ".");
        return ExitCode.SOURCE_ERRORS;
    }

    private void print(Checked checked, Findings findings, String lastLine) {
        format.print(new Report(findings, checked.source(), source.toString()), lastLine, terminal);
    }
}
