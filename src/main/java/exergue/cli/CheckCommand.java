package exergue.cli;

import exergue.Exergue;
import exergue.cli.report.Report;
import exergue.finding.Findings;
import java.io.IOException;
import java.nio.file.Path;
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
            + "takes about a second for each.")
    private boolean pictures;

    @Option(names = "--excused", description = "Also lists what entries excuse, with their reasons.")
    private boolean excused;

    @Option(names = "--explain", paramLabel = "CODE", description = "Checks nothing, but explains a finding, as the command explain does.")
    private String code;

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
        try (StageLines progress = new StageLines(terminal)) {
            Exergue.Checked checked = Exergue.check(SourceFolder.open(source), progress);
            Findings findings = pictures ? checked.findings().and(Exergue.gauge(checked, progress)) : checked.findings();
            String coins = checked.catalogue()
                    .map(c -> HowMany.count(c.coins().size(), "coin") + " in " + HowMany.count(c.types().size(), "type") + ", ")
                    .orElse("");
            format.print(new Report(findings, checked.source(), source.toString()), excused,
                    source + ": " + coins + HowMany.of(findings), terminal);
            return findings.hasErrors() ? ExitCode.SOURCE_ERRORS : ExitCode.CLEAN;
        }
    }
}
