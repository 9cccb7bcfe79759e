package exergue.cli;

import exergue.cli.report.RemarkText;
import exergue.files.SelectedTree;
import exergue.finding.NearMiss;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Parsed;
import exergue.measure.PrintForm;
import exergue.measure.Working;
import exergue.model.Catalogue;
import exergue.source.SourceReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Normalises one reading and shows the working. */
@Command(name = "reading", customSynopsis = {
    "exergue reading weight|diameter|axis|thickness|density|surface TEXT [--by=CONVENTION] [--source=SOURCE]",
    "       exergue reading --units"},
        description = "Normalises one reading and shows the working, as in: exergue reading weight 59.7 grains")
final class ReadingCommand implements Callable<Integer> {

    private static final PrintForm HOUSE_UNKNOWN = PrintForm.DEFAULT;

    private final Terminal terminal;

    @Parameters(paramLabel = "KIND TEXT", arity = "0..*",
            description = "What was measured, and the text as it was recorded.")
    private List<String> words = new ArrayList<>();

    @Option(names = "--by", paramLabel = "CONVENTION",
            description = "The measuring convention it was recorded under, by its id in conventions.yaml.")
    private String by;

    @Option(names = "--source", paramLabel = "SOURCE",
            description = "Folder with that conventions.yaml; its house style is used too. Default with --by: the "
                    + "folder you are in.")
    private Path source;

    @Option(names = "--units", description = "Lists every unit with its exact factor and where that comes from.")
    private boolean units;

    ReadingCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (units) {
            terminal.out().print(UnitTable.text());
            return ExitCode.CLEAN;
        }
        Kind kind = kind();
        String text = text();
        Convention convention = Convention.UNDECLARED;
        PrintForm form = HOUSE_UNKNOWN;
        if (by != null || source != null) {
            Catalogue catalogue = catalogue(source == null ? Path.of(".") : source);
            convention = by == null ? convention : convention(catalogue);
            form = catalogue.style().form();
        }
        return show(Working.of(kind, text, convention, form), text);
    }

    private int show(Working working, String text) {
        working.lines().forEach(line -> terminal.out().printf(Locale.ROOT, "%-16s%s%n", line.label(), line.text()));
        working.remarks().forEach(remark -> terminal.out().print(RemarkText.of(remark, text)));
        if (by == null && working.remarks().stream().anyMatch(remark -> remark.remedy().contains("convention"))) {
            terminal.out().println("Here a convention is named with --by=ID, and the folder of its conventions.yaml with --source=FOLDER.");
        }
        return working.parsed() instanceof Parsed.Refused ? ExitCode.SOURCE_ERRORS : ExitCode.CLEAN;
    }

    private Kind kind() {
        List<String> kinds = Arrays.stream(Kind.values()).map(Kind::word).toList();
        String all = String.join(", ", kinds);
        if (words.isEmpty()) {
            throw new UsageException("Say what was measured (" + all
                    + ") and the text, as in: exergue reading weight 3.87 g");
        }
        return Arrays.stream(Kind.values()).filter(kind -> kind.word().equals(words.get(0))).findFirst()
                .orElseThrow(() -> new UsageException("“" + words.get(0) + "” is not something that is measured here. "
                        + NearMiss.of(words.get(0), kinds).map(near -> "Did you mean “" + near + "”?")
                                .orElse("There are: " + all + ".")));
    }

    private String text() {
        List<String> text = words.subList(1, words.size());
        text.stream().filter(word -> word.startsWith("--")).findFirst().ifPresent(word -> {
            throw new UsageException("“" + word + "” is not an option of this command. It has --by, --source and --units.");
        });
        if (text.isEmpty()) {
            throw new UsageException("Give the text of the reading too, as in: exergue reading " + words.get(0) + " …");
        }
        return String.join(" ", text);
    }

    /** Only what stands beside catalogue.yaml is read: no coins, no chapters. */
    private static Catalogue catalogue(Path source) throws IOException {
        return SourceReader.read(new SelectedTree(SourceFolder.open(source), path -> !path.contains("/"))).catalogue()
                .orElseThrow(() -> new UsageException("“" + source + "” has no catalogue.yaml that can be read. "
                        + "Name the folder of the catalogue with --source."));
    }

    private Convention convention(Catalogue catalogue) {
        if (!catalogue.conventions().containsKey(by)) {
            throw new UsageException("conventions.yaml has no convention “" + by + "”. "
                    + NearMiss.of(by, catalogue.conventions().keySet()).map(near -> "Did you mean “" + near + "”?")
                            .orElse("It has: " + catalogue.conventions().keySet().stream()
                                    .collect(Collectors.joining(", ")) + "."));
        }
        return catalogue.conventions().get(by).value();
    }
}
