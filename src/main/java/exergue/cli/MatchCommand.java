package exergue.cli;

import exergue.Exergue;
import exergue.cli.report.Report;
import exergue.exchange.MatchCsv;
import exergue.exchange.MeasurementSheet;
import exergue.files.Delivery;
import exergue.files.FolderTree;
import exergue.files.Tree;
import exergue.finding.NearMiss;
import exergue.measure.Convention;
import exergue.model.Catalogue;
import exergue.study.match.Match;
import exergue.study.match.MatchRow;
import exergue.study.match.Matching;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds which coins of the catalogue some coins are that were measured afresh. */
@Command(name = "match", description = "Finds which coins are which when tickets were lost or changed round: holds fresh "
        + "measurements against the entries, and says for each coin which it is, how sure that is, and which others it may be. Nothing "
        + "in SOURCE is changed.")
final class MatchCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "SOURCE", description = "Folder that holds catalogue.yaml.")
    private Path source;

    @Parameters(index = "1", paramLabel = "MEASUREMENTS.csv", description = "The fresh measurements: a table with the headings label, "
            + "ticket, weight, diameter, axis, in any order; those you have not may be left out.")
    private Path sheet;

    @Option(names = "--by", paramLabel = "CONVENTION", description = "The convention of conventions.yaml under which they were taken: "
            + "its units hold for bare figures, and its errors are known. Without it every figure needs its unit.")
    private String by;

    @Option(names = "--to", paramLabel = "FILE", description = "Also writes the answers to this CSV file.")
    private Path to;

    @Mixin
    private FormatOption format;

    MatchCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        try (StageLines progress = new StageLines(terminal)) {
            Tree beside = new FolderTree(Optional.ofNullable(sheet.toAbsolutePath().getParent()).orElse(Path.of(".")));
            String name = sheet.getFileName().toString();
            if (!beside.has(name)) {
                throw new UsageException("There is no file “" + sheet + "”. Name the table with the fresh measurements.");
            }
            Exergue.Checked checked = Exergue.check(SourceFolder.open(source), progress);
            if (checked.catalogue().isEmpty()) {
                format.print(new Report(checked.findings(), checked.source(), source.toString()),
                        "Nothing was compared: " + HowMany.of(checked.findings()) + ".", terminal);
                return ExitCode.SOURCE_ERRORS;
            }
            Catalogue catalogue = checked.catalogue().get();
            MeasurementSheet.Sheet fresh = MeasurementSheet.read(beside, name, catalogue, convention(catalogue));
            String folder = sheet.getParent() == null ? "." : sheet.getParent().toString();
            format.print(new Report(fresh.findings(), beside, folder), name + ": " + HowMany.count(fresh.coins().size(), "coin")
                    + " measured, " + HowMany.of(fresh.findings()), terminal);
            answer(Matching.of(catalogue, fresh.coins()));
            return fresh.findings().hasErrors() || checked.findings().hasErrors() ? ExitCode.SOURCE_ERRORS : ExitCode.CLEAN;
        }
    }

    private Convention convention(Catalogue catalogue) {
        if (by == null) {
            return Convention.UNDECLARED;
        }
        if (!catalogue.conventions().containsKey(by)) {
            throw new UsageException("There is no measuring convention “" + by + "” in conventions.yaml. "
                    + NearMiss.of(by, catalogue.conventions().keySet()).map(near -> "Did you mean “" + near + "”?")
                            .orElse("Name one of “" + String.join("”, “", catalogue.conventions().keySet()) + "”."));
        }
        return catalogue.conventions().get(by).value();
    }

    private void answer(Matching matching) throws IOException {
        if (matching.matches().isEmpty()) {
            return;
        }
        List<MatchRow> rows = matching.matches().stream().map(MatchRow::of).toList();
        terminal.out().print("\n" + MatchText.of(rows));
        matching.exchanged().forEach(ring -> terminal.out().println("\n" + MatchText.exchanged(ring)));
        terminal.out().println("\n" + MatchText.sum(matching.matches().stream().map(Match::sureness).toList()));
        if (to != null) {
            Path target = to.toAbsolutePath();
            try (Delivery delivery = new Delivery(target.getParent())) {
                delivery.write(target.getFileName().toString(), MatchCsv.of(rows).getBytes(StandardCharsets.UTF_8));
                delivery.deliver();
            }
            terminal.out().println("Table: " + to);
        }
    }
}
