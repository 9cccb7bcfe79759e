package exergue.cli.report;

import exergue.measure.Remark;

/** A remark on a text that was typed, not written in a file: the text, carets under what is meant, and the sentences. */
public final class RemarkText {

    private RemarkText() { }

    /** @param text the whole reading that the remark counts its offset in */
    public static String of(Remark remark, String text) {
        MarkedLine marked = MarkedLine.of(Harmless.oneLine(text), remark.offset() + 1, remark.length());
        String severity = remark.fault().refused() ? "error" : "note";
        return "\n" + severity + ": " + Harmless.oneLine(remark.what()) + "\n    " + marked.shown() + "\n    "
                + marked.marks() + "\n    " + Harmless.oneLine(remark.remedy()) + "\n    [" + remark.fault().id() + "]\n";
    }
}
