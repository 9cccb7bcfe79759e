package exergue.cli.report;

import exergue.finding.Excused;
import java.util.List;

/** What entries excuse: each finding on a line as without the excuse, and under it the reason and where it is written. */
public final class ExcusedText {

    private ExcusedText() { }

    /** Ends with an empty line. */
    public static String render(Report report, Ink ink) {
        List<Excused> excused = report.findings().excused();
        if (excused.isEmpty()) {
            return "Nothing is excused.\n\n";
        }
        StringBuilder text = new StringBuilder("Excused, each with its reason:\n\n");
        for (Excused one : excused) {
            text.append(ConciseText.heading(one.finding(), report, ink)).append(' ')
                    .append(ink.faint("[" + one.finding().code().id() + "]")).append("\n    because: ")
                    .append(Harmless.oneLine(one.because())).append(" (").append(ConciseText.place(one.where(), report))
                    .append(")\n");
        }
        return text.append('\n').toString();
    }
}
