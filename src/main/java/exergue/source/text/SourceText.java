package exergue.source.text;

import exergue.finding.Place;
import java.text.Normalizer;
import java.util.Arrays;

/**
 * The text of one file with its places. Line ends are {@code \n}, a byte order mark is gone, everything else
 * stands as in the file, so that lines and columns are those an editor shows.
 */
public final class SourceText {

    private final String file;
    private final String text;
    private final boolean composed;
    private final int[] lineStarts;

    public SourceText(String file, String text) {
        this.file = file;
        this.text = text;
        this.composed = Normalizer.isNormalized(text, Normalizer.Form.NFC);
        this.lineStarts = lineStarts(text);
    }

    private static int[] lineStarts(String text) {
        int[] starts = new int[16];
        int count = 1;
        for (int at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) {
            if (count == starts.length) {
                starts = Arrays.copyOf(starts, count * 2);
            }
            starts[count++] = at + 1;
        }
        return Arrays.copyOf(starts, count);
    }

    public String file() {
        return file;
    }

    public String text() {
        return text;
    }

    /** Line by number, from 1, without its end; empty beyond the last. */
    public String line(int number) {
        if (number < 1 || number > lineStarts.length) {
            return "";
        }
        int end = number < lineStarts.length ? lineStarts[number] - 1 : text.length();
        return text.substring(lineStarts[number - 1], end);
    }

    /** How many lines there are; a last empty one counts. */
    public int lines() {
        return lineStarts.length;
    }

    /** Code points from a column (from 1) to the end of its line. */
    public int restOfLine(int line, int column) {
        String whole = line(line);
        return Math.max(0, whole.codePointCount(0, whole.length()) - column + 1);
    }

    /** The place of {@code length} chars from {@code index}, both as {@link String} counts; cut at the line's end. */
    public Place place(int index, int length) {
        int found = Arrays.binarySearch(lineStarts, index);
        int line = found >= 0 ? found : -found - 2;
        int lineEnd = line + 1 < lineStarts.length ? lineStarts[line + 1] - 1 : text.length();
        int end = Math.min(lineEnd, index + length);
        return new Place(file, line + 1, text.codePointCount(lineStarts[line], index) + 1,
                end > index ? text.codePointCount(index, end) : 0);
    }

    /** A value from this file in the composed form (NFC) that the book prints and entries are compared in. */
    public String composed(String value) {
        return composed ? value : Normalizer.normalize(value, Normalizer.Form.NFC);
    }

    boolean isComposed() {
        return composed;
    }
}
