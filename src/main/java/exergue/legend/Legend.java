package exergue.legend;

import java.util.List;

/**
 * A legend.
 *
 * @param text  as written in the entry
 * @param parts in the order of reading
 */
public record Legend(String text, List<Part> parts) {

    public Legend {
        parts = List.copyOf(parts);
    }

    /** A text whose signs are not understood: letters, and no more is known of them. */
    public static Legend asWritten(String text) {
        return new Legend(text, List.of(new Part.Plain(text)));
    }

    /** As the book prints it. */
    public String printed() {
        return Letters.printed(parts);
    }

    /** By which an index sorts it; see {@link Letters#sortKey}. */
    public String sortKey() {
        return Letters.sortKey(parts);
    }

    /** The letters on the coin alone. */
    public String plainLetters() {
        return Letters.onCoin(parts);
    }

    @Override
    public String toString() {
        return text;
    }
}
