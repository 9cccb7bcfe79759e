package exergue.legend;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;

/**
 * One sign of a legend with its place.
 *
 * @param text   a letter with its marks, or a bracket as printed, whatever was typed for it
 * @param offset in the written text, in code points
 * @param length in the written text
 */
record Sign(String text, int offset, int length) {

    /**
     * Letters and brackets of the text; {@code [[} is {@code ⟦} if there is a {@code ]]} for it. Of three at the end of
     * {@code [[ΤΗΛΑΝ[ΟΡΟΣ]]]} the first closes the inner bracket, the other two the outer.
     */
    static List<Sign> of(String text) {
        int[] points = text.codePoints().toArray();
        List<Sign> signs = new ArrayList<>();
        boolean doubled = text.contains("[[") && text.contains("]]");
        int at = 0;
        int inner = 0;
        while (at < points.length) {
            int length = 1;
            String sign = Character.toString(points[at]);
            boolean twice = doubled && at + 1 < points.length && points[at + 1] == points[at];
            if (twice && (points[at] == '[' || points[at] == ']' && inner <= 0)) {
                sign = points[at] == '[' ? "⟦" : "⟧";
                length = 2;
            } else if (points[at] == '<' || points[at] == '>') {
                sign = points[at] == '<' ? "⟨" : "⟩";
            } else {
                while (at + length < points.length && Letters.isMark(points[at + length])) {
                    sign += Character.toString(points[at + length++]);
                }
            }
            inner = sign.equals("⟦") ? 0 : inner + (sign.equals("[") ? 1 : sign.equals("]") ? -1 : 0);
            signs.add(new Sign(sign, at, length));
            at += length;
        }
        return signs;
    }

    boolean is(String other) {
        return text.equals(other);
    }

    boolean isDotted() {
        return has(Letters.DOT_BELOW);
    }

    boolean isTied() {
        return has(Letters.TIE);
    }

    private boolean has(int mark) {
        return Normalizer.normalize(text, Normalizer.Form.NFD).codePoints().anyMatch(point -> point == mark);
    }

    /** A mark that can only stand on a letter, and does not. */
    boolean isLoose() {
        return (isDotted() || isTied()) && !Character.isLetterOrDigit(Normalizer.normalize(text, Normalizer.Form.NFD).codePointAt(0));
    }

    /** The letter without dot and tie. */
    String letter() {
        return without(text, Letters.DOT_BELOW, Letters.TIE);
    }

    /** The letter without its tie; a damaged letter can be joined to others. */
    String untied() {
        return without(text, Letters.TIE, Letters.TIE);
    }

    static String without(String text, int mark, int other) {
        StringBuilder bare = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFD).codePoints()
                .filter(point -> point != mark && point != other).forEach(bare::appendCodePoint);
        return Normalizer.normalize(bare, Normalizer.Form.NFC);
    }
}
