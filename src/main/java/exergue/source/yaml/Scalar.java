package exergue.source.yaml;

import exergue.finding.Place;

/**
 * A text value as written: {@code 0042} stays {@code 0042} and {@code no} stays {@code no}, whatever YAML makes of it.
 *
 * @param text   the value, composed (NFC)
 * @param place  of the whole value, its quotes included
 * @param plain  written without quotes
 * @param layout how characters of the text lie in the file
 */
public record Scalar(String text, Place place, boolean plain, Layout layout) implements Value {

    /**
     * How a text lies in its file.
     *
     * @param kind   whether single characters can be found again
     * @param offset on one line: code points before the text (1 after a quote); in lines: the indentation
     */
    public record Layout(Kind kind, int offset) {

        /** The text cannot be matched to the file character by character: escapes, folded lines. */
        public static final Layout SCATTERED = new Layout(Kind.SCATTERED, 0);

        /** How closely text and file match. */
        public enum Kind { ON_ONE_LINE, IN_LINES, SCATTERED }
    }

    /** A value nobody wrote: what stands in for one. */
    public static Scalar standIn(String text, Place place) {
        return new Scalar(text, place, false, Layout.SCATTERED);
    }

    @Override
    public String name() {
        return "text";
    }

    /** Nothing written after the key; {@code ~} and {@code null} are YAML's own words for that. */
    public boolean isNothing() {
        return text.isBlank() || plain && (text.equals("~") || text.equals("null"));
    }

    /** The place of a part of the text, in code points; the whole value where that cannot be told. */
    public Place at(int offset, int length) {
        return switch (layout.kind()) {
            case ON_ONE_LINE -> place.within(layout.offset() + offset, length);
            case IN_LINES -> inLines(text.offsetByCodePoints(0, offset), length);
            case SCATTERED -> place;
        };
    }

    private Place inLines(int index, int length) {
        int line = 0;
        int lineStart = 0;
        for (int end = text.indexOf('\n'); end >= 0 && end < index; end = text.indexOf('\n', lineStart)) {
            line++;
            lineStart = end + 1;
        }
        int column = layout.offset() + text.codePointCount(lineStart, index) + 1;
        return new Place(place.file(), place.line() + 1 + line, column, length);
    }
}
