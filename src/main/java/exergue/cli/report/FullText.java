package exergue.cli.report;

import exergue.finding.Finding;
import exergue.finding.Place;

/** Findings for reading at the desk: what is wrong, the line it stands on with carets under the value, what to do. */
final class FullText {

    private static final String INDENT = "    ";

    private final Report report;
    private final Ink ink;
    private final SourceLines lines;
    private final StringBuilder text = new StringBuilder();

    FullText(Report report, Ink ink) {
        this.report = report;
        this.ink = ink;
        this.lines = new SourceLines(report.tree());
    }

    String render() {
        for (Finding finding : report.findings().all()) {
            write(finding);
        }
        return text.toString();
    }

    private void write(Finding finding) {
        text.append(ConciseText.heading(finding, report, ink)).append('\n');
        writeSourceLine(finding);
        text.append(INDENT).append(Harmless.oneLine(finding.remedy())).append('\n');
        for (Finding.Related related : finding.related()) {
            text.append(INDENT).append("See ").append(ConciseText.place(related.place(), report)).append(": ")
                    .append(Harmless.oneLine(related.what())).append('\n');
        }
        text.append(ink.faint(INDENT + "[" + finding.code().id() + "]" + dataPath(finding))).append("\n\n");
    }

    private void writeSourceLine(Finding finding) {
        Place place = finding.place();
        lines.line(place.file(), place.line()).ifPresent(line -> {
            MarkedLine marked = MarkedLine.of(line, place.column(), place.length());
            String number = Integer.toString(place.line());
            String blank = " ".repeat(number.length());
            text.append(INDENT).append(ink.faint(number + " | ")).append(marked.shown()).append('\n');
            if (place.column() > 0) {
                text.append(INDENT).append(ink.faint(blank + " | "))
                        .append(ink.severity(finding.severity(), marked.marks())).append('\n');
            }
        });
    }

    private static String dataPath(Finding finding) {
        return finding.path().isEmpty() ? "" : " at " + Harmless.oneLine(finding.path());
    }
}
