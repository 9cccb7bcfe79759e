package exergue.cli;

import exergue.Exergue;
import exergue.finding.Findings;
import exergue.finding.NearMiss;
import exergue.model.Catalogue;
import exergue.model.CoinField;
import exergue.study.figure.Request;
import exergue.study.figure.Subject;
import exergue.study.figure.Subjects;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import exergue.study.group.Gathering;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sums up weights, die-axes and diameters of groups of coins. */
@Command(name = "metrology", description = "Sums up weights, die-axes and diameters of groups of coins: tables here, or all tables as CSV "
        + "or all charts as SVG in a folder.")
final class MetrologyCommand implements Callable<Integer> {

    /** In what the figures are given. */
    enum As { TEXT, CSV, SVG }

    private static final List<String> MEASURED = Subjects.metrology().stream().map(Subject::word).toList();

    private final Terminal terminal;

    @Parameters(paramLabel = "SOURCE", arity = "0..1", defaultValue = ".",
            description = "Folder that holds catalogue.yaml. Default: the folder you are in.")
    private Path source;

    @Option(names = "--group", split = ",", paramLabel = "NAMES", description = "What every coin is divided by, such as mint,denomination "
            + "(${COMPLETION-CANDIDATES}); or ids of groups of catalogue.yaml. Without it: the groups of catalogue.yaml, or every coin as one group.",
            completionCandidates = Fields.class)
    private List<String> groups = new ArrayList<>();

    @Option(names = "--show", paramLabel = "SUBJECT", description = "What to show, with a form if not as its first table: "
            + "weights, weights:comparison. May be repeated. Without it: weights, axes, diameters.")
    private List<String> subjects = new ArrayList<>();

    @Option(names = "--as", paramLabel = "FORM", defaultValue = "TEXT", description = "text, csv or svg. Default: text.")
    private As as;

    @Option(names = "--to", paramLabel = "DIR", description = "Folder for the files of csv and svg.")
    private Path to;

    MetrologyCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    /** For the help. */
    static final class Fields implements Iterable<String> {
        @Override
        public java.util.Iterator<String> iterator() {
            return CoinField.words().iterator();
        }
    }

    @Override
    public Integer call() throws IOException {
        if (as != As.TEXT && to == null) {
            throw new UsageException("Name a folder for the files: --to DIR.");
        }
        try (StageLines progress = new StageLines(terminal)) {
            List<FigureOutput.Wanted> wanted = wanted();
            Exergue.Checked checked = Exergue.check(SourceFolder.open(source), progress);
            if (checked.catalogue().isPresent()) {
                Request request = new Request(groups(checked.catalogue().get()), Optional.empty(), Wording.PLAIN);
                FigureOutput output = new FigureOutput(terminal, request);
                switch (as) {
                    case TEXT -> output.print(wanted);
                    case CSV -> output.tables(wanted, to);
                    case SVG -> output.charts(wanted, to);
                }
            }
            return close(checked.findings());
        }
    }

    /** Subjects with their forms; in files all forms of a subject that names none. */
    private List<FigureOutput.Wanted> wanted() {
        List<FigureOutput.Wanted> wanted = new ArrayList<>();
        for (String text : subjects.isEmpty() ? MEASURED : subjects) {
            String[] parts = text.split(":", 2);
            Subject subject = Subjects.named(parts[0]).orElseThrow(() -> unknown("subject", parts[0], Subjects.words()));
            if (parts.length == 2 && !subject.forms().contains(parts[1])) {
                throw unknown("form of " + subject.word(), parts[1], subject.forms());
            }
            List<String> forms = parts.length == 2 ? List.of(parts[1]) : as == As.TEXT ? subject.forms().subList(0, 1) : subject.forms();
            forms.forEach(form -> wanted.add(new FigureOutput.Wanted(subject, form)));
        }
        return wanted;
    }

    private List<Coins> groups(Catalogue catalogue) {
        Gathering gathering = Gathering.of(catalogue);
        if (groups.isEmpty()) {
            return gathering.ids().isEmpty() ? List.of(gathering.all("every coin"))
                    : gathering.ids().stream().flatMap(id -> gathering.declared(id).orElseThrow().stream()).toList();
        }
        List<String> names = groups.stream().map(name -> name.strip().toLowerCase(Locale.ROOT)).toList();
        List<CoinField> fields = names.stream().flatMap(name -> CoinField.named(name).stream()).toList();
        if (fields.size() == names.size()) {
            return gathering.by(fields);
        }
        List<Coins> all = new ArrayList<>();
        for (String id : groups) {
            all.addAll(gathering.declared(id.strip()).orElseThrow(() -> unknown("group", id,
                    Stream.concat(gathering.ids().stream(), CoinField.words().stream()).toList())));
        }
        return all;
    }

    private static UsageException unknown(String what, String word, Collection<String> known) {
        return new UsageException("There is no " + what + " “" + word + "”. " + NearMiss.of(word, known)
                .map(near -> "Did you mean “" + near + "”?").orElse("There are: " + String.join(", ", known) + "."));
    }

    private int close(Findings findings) {
        if (!findings.hasErrors()) {
            return ExitCode.CLEAN;
        }
        terminal.err().println("The source has errors, and what they touch was left out: " + HowMany.of(findings)
                + ". “exergue check " + source + "” lists them.");
        return ExitCode.SOURCE_ERRORS;
    }
}
