package exergue.cli;

import exergue.cli.report.ExcusedText;
import exergue.cli.report.Format;
import exergue.cli.report.Report;
import picocli.CommandLine.Option;

/** How findings are given out, for every command that has some. */
final class FormatOption {

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "full",
            description = "How findings are given out: full (with the source line), concise (one line each), "
                    + "json or sarif (for machines). Default: full.")
    private Format format;

    /** True where a program reads the output, so that nothing else may stand there. */
    boolean isForMachines() {
        return format.forMachines();
    }

    /**
     * Findings to the output, then the last line: after them where a person reads, on the error stream where a
     * program does.
     */
    void print(Report report, String lastLine, Terminal terminal) {
        print(report, false, lastLine, terminal);
    }

    /** @param excused whether what entries excuse is listed too; where a program reads, it always is */
    void print(Report report, boolean excused, String lastLine, Terminal terminal) {
        terminal.out().print(format.render(report, terminal.ink()));
        if (excused && !format.forMachines()) {
            terminal.out().print(ExcusedText.render(report, terminal.ink()));
        }
        (format.forMachines() ? terminal.err() : terminal.out()).println(lastLine);
    }
}
