package exergue.cli.report;

import exergue.finding.Finding;
import exergue.finding.Place;

/** One line for each finding: {@code coins/a.yaml:7:11: error: what is wrong What to do [code]}. */
final class ConciseText {

    private ConciseText() { }

    static String render(Report report, Ink ink) {
        StringBuilder text = new StringBuilder();
        for (Finding finding : report.findings().all()) {
            text.append(heading(finding, report, ink)).append(' ')
                    .append(Harmless.oneLine(finding.remedy())).append(' ')
                    .append(ink.faint("[" + finding.code().id() + "]")).append('\n');
        }
        return text.toString();
    }

    /** Place, severity and what is wrong. */
    static String heading(Finding finding, Report report, Ink ink) {
        return ink.strong(place(finding.place(), report)) + ": "
                + ink.severity(finding.severity(), finding.severity().word() + ":") + " "
                + Harmless.oneLine(finding.what());
    }

    static String place(Place place, Report report) {
        Place seen = new Place(report.seen(place.file()), place.line(), place.column(), place.length());
        return Harmless.oneLine(seen.toString());
    }
}
