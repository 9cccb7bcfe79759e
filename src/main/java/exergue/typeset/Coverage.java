package exergue.typeset;

import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Place;
import exergue.model.Written;
import exergue.typeset.Faces.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.LinkedHashSet;
import java.util.Set;

/** Whether the book's face has every letter and mark that will be printed. */
public final class Coverage {

    private static final int FIRST_PRINTED = 0x20;

    private Coverage() { }

    /**
     * One finding for each text and letter that the face lacks in any of its styles; the same text may be roman in
     * an entry and italic in a running head.
     */
    public static Findings missing(List<Written<String>> texts) {
        List<Finding> findings = new ArrayList<>();
        for (Written<String> text : texts) {
            for (int letter : lacking(text.value())) {
                findings.add(finding(text, letter));
            }
        }
        return Findings.of(findings);
    }

    private static Set<Integer> lacking(String text) {
        Set<Integer> lacking = new LinkedHashSet<>();
        text.codePoints().filter(letter -> letter >= FIRST_PRINTED && !printable(letter)).forEach(lacking::add);
        return lacking;
    }

    private static boolean printable(int letter) {
        for (Style style : Style.values()) {
            if (!Faces.has(style, letter)) {
                return false;
            }
        }
        return true;
    }

    private static Finding finding(Written<String> text, int letter) {
        int offset = text.value().codePointCount(0, text.value().indexOf(Character.toString(letter)));
        Place place = text.value().contains("\n") || text.place().column() == 0
                ? text.place() : text.place().within(offset, 1);
        String name = Character.getName(letter);
        return Finding.of(TypesetCodes.MISSING_LETTER, place, "",
                "The book's face has no “" + Character.toString(letter) + "” (" + String.format(Locale.ROOT, "U+%04X", letter)
                        + (name == null ? "" : ", " + name.toLowerCase(java.util.Locale.ROOT)) + ").",
                "Write it with letters that " + Faces.FAMILY + " has, or describe the mark in words.");
    }
}
