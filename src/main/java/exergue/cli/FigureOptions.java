package exergue.cli;

import exergue.Exergue;
import exergue.finding.Findings;
import exergue.finding.NearMiss;
import exergue.model.Catalogue;
import exergue.model.CoinField;
import exergue.study.figure.Request;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import exergue.study.group.Gathering;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the commands that show figures of groups of coins have in common: which coins, in what form, and where to. */
final class FigureOptions {

    /** In what the figures are given. */
    enum As { TEXT, CSV, SVG }


    @Parameters(paramLabel = "SOURCE", arity = "0..1", defaultValue = ".",
            description = "Folder that holds catalogue.yaml. Default: the folder you are in.")
    private Path source;

    @Option(names = "--group", split = ",", paramLabel = "NAMES", description = "What every coin is divided by, such as mint,denomination "
            + "(${COMPLETION-CANDIDATES}); or ids of groups of catalogue.yaml. Without it: the groups of catalogue.yaml, or every coin as one group; "
            + "for dies always every coin.",
            completionCandidates = Fields.class)
    private List<String> groups = new ArrayList<>();

    @Option(names = "--as", paramLabel = "FORM", defaultValue = "TEXT", description = "text, csv or svg. Default: text.")
    private As as;

    @Option(names = "--to", paramLabel = "DIR", description = "Folder for the files of csv and svg.")
    private Path to;

    boolean asText() {
        return as == As.TEXT;
    }

    /** @param whole true where without a name every coin is one group, and not the groups that the catalogue declares */
    int show(List<FigureOutput.Wanted> wanted, boolean whole, Terminal terminal) throws IOException {
        if (as != As.TEXT && to == null) {
            throw new UsageException("Name a folder for the files: --to DIR.");
        }
        try (StageLines progress = new StageLines(terminal)) {
            Exergue.Checked checked = Exergue.check(SourceFolder.open(source), progress);
            if (checked.catalogue().isPresent()) {
                Request request = new Request(groups(checked.catalogue().get(), whole), Optional.empty(), Wording.PLAIN);
                FigureOutput output = new FigureOutput(terminal, request);
                switch (as) {
                    case TEXT -> output.print(wanted);
                    case CSV -> output.tables(wanted, to);
                    case SVG -> output.charts(wanted, to);
                }
            }
            return close(checked.findings(), terminal);
        }
    }

    private List<Coins> groups(Catalogue catalogue, boolean whole) {
        Gathering gathering = Gathering.of(catalogue);
        if (groups.isEmpty()) {
            return whole || gathering.ids().isEmpty() ? List.of(gathering.all("every coin"))
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

    static UsageException unknown(String what, String word, Collection<String> known) {
        return new UsageException("There is no " + what + " “" + word + "”. " + NearMiss.of(word, known)
                .map(near -> "Did you mean “" + near + "”?").orElse("There are: " + String.join(", ", known) + "."));
    }

    private int close(Findings findings, Terminal terminal) {
        if (!findings.hasErrors()) {
            return ExitCode.CLEAN;
        }
        terminal.err().println("The source has errors, and what they touch was left out: " + HowMany.of(findings)
                + ". “exergue check " + source + "” lists them.");
        return ExitCode.SOURCE_ERRORS;
    }
    /** For the help. */
    static final class Fields implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return CoinField.words().iterator();
        }
    }
}
