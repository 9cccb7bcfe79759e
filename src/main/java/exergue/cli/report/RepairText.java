package exergue.cli.report;

import exergue.Repair;
import exergue.source.heldback.HeldBack;
import java.util.List;

/** Changed lines as they were and as they are, each pair under its place. */
public final class RepairText {

    private RepairText() { }

    /** Ends with an empty line; empty where nothing has changed. */
    public static String render(List<Repair.Change> changes, Report report, Ink ink) {
        StringBuilder text = new StringBuilder();
        for (Repair.Change change : changes) {
            text.append(ink.strong(Harmless.oneLine(report.seen(change.file())) + ":" + change.line())).append(' ')
                    .append(ink.faint("[" + String.join(", ", change.codes()) + "]")).append('\n')
                    .append("  - ").append(shown(change, change.before())).append('\n')
                    .append("  + ").append(shown(change, change.after())).append("\n\n");
        }
        return text.toString();
    }

    private static String shown(Repair.Change change, String line) {
        boolean heldBack = change.file().equals(HeldBack.FILE);
        return Harmless.oneLine(heldBack ? HeldBack.in(List.of(line)).shown().get(0) : line);
    }
}
