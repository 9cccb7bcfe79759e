package exergue.cli;

import exergue.Exergue;
import exergue.Progress;
import exergue.Repair;
import exergue.cli.report.RepairText;
import exergue.cli.report.Report;
import exergue.files.Cache;
import exergue.files.Delivery;
import exergue.files.Tree;
import exergue.finding.Findings;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reads and checks a source folder without making a book. */
@Command(name = "check", description = "Checks a source folder and says what is wrong, without making the book.")
final class CheckCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "SOURCE", arity = "0..1", defaultValue = ".",
            description = "Folder that holds catalogue.yaml. Default: the folder you are in.")
    private Path source;

    @Option(names = "--pictures", description = "Also measures every photograph and holds diameters and axes against it; "
            + "the first time that takes a while.")
    private boolean pictures;

    @Option(names = "--excused", description = "Also lists what entries excuse, with their reasons.")
    private boolean excused;

    @Option(names = "--explain", paramLabel = "CODE", description = "Checks nothing, but explains a finding, as the command explain does.")
    private String code;

    @Option(names = "--repair", description = "Mends what can be mended without harm (spelling of key words, words of the house, "
            + "dashes, spaces, accents written apart), writes the files and shows every line that changes; then checks.")
    private boolean repair;

    @Option(names = "--show-repairs", description = "Shows what --repair would change, and writes nothing.")
    private boolean showRepairs;

    @Mixin
    private CacheOption kept;

    @Mixin
    private FormatOption format;

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (code != null) {
            terminal.out().print(CodePage.plain(CodePage.named(code)));
            return ExitCode.CLEAN;
        }
        if (repair || showRepairs) {
            repair();
        }
        try (StageLines progress = new StageLines(terminal)) {
            Cache cache = kept.ofSource(source);
            Exergue.Checked checked = Exergue.check(pictures ? SourceFolder.open(source, cache) : SourceFolder.open(source), progress);
            Findings findings = pictures ? checked.findings().and(Exergue.gauge(checked, cache, CacheOption.workroom(), progress)) : checked.findings();
            String coins = checked.catalogue()
                    .map(c -> HowMany.count(c.coins().size(), "coin") + " in " + HowMany.count(c.types().size(), "type") + ", ")
                    .orElse("");
            format.print(new Report(findings, checked.source(), source.toString()), excused,
                    source + ": " + coins + HowMany.of(findings), terminal);
            return findings.hasErrors() ? ExitCode.SOURCE_ERRORS : ExitCode.CLEAN;
        }
    }

    private void repair() throws IOException {
        Tree tree = SourceFolder.open(source);
        Repair.Repaired repaired = Repair.of(tree, now -> Exergue.check(now, Progress.SILENT).findings());
        if (repair && !repaired.files().isEmpty()) {
            try (Delivery delivery = new Delivery(source)) {
                for (Map.Entry<String, byte[]> file : repaired.files().entrySet()) {
                    delivery.write(file.getKey(), file.getValue());
                }
                delivery.deliver();
            }
        }
        PrintWriter to = format.isForMachines() ? terminal.err() : terminal.out();
        to.print(RepairText.render(repaired.changes(), new Report(Findings.none(), tree, source.toString()), terminal.ink()));
        String lines = HowMany.count(repaired.changes().size(), "line");
        to.println(repaired.changes().isEmpty() ? "Nothing can be repaired." : repair
                ? lines + " repaired." : lines + " can be repaired; --repair does it.");
        to.println();
    }
}
