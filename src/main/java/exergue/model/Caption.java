package exergue.model;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a numbered table or figure is called.
 *
 * @param id    by which a text refers to it: {@code [table:weights]}; few need one
 * @param runs  its words, without label
 * @param label its number in the book; none before the book is in order, and none for what an entry's note shows
 */
public record Caption(Kind kind, Optional<Written<String>> id, List<Inline> runs, Optional<Label> label) {

    /** The two series of numbers. */
    public enum Kind {
        TABLE, FIGURE;

        /** As a cross-reference names it: {@code table}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * @param number in its series, from 1
     * @param anchor of the table or figure
     * @param words  "Table 3"
     */
    public record Label(int number, String anchor, String words) { }

    public Caption {
        runs = List.copyOf(runs);
    }

    /** A caption that nobody refers to. */
    public static Caption of(Kind kind, List<Inline> runs) {
        return new Caption(kind, Optional.empty(), runs, Optional.empty());
    }

    public Caption with(List<Inline> otherRuns) {
        return new Caption(kind, id, otherRuns, label);
    }

    public Caption numbered(Label its) {
        return new Caption(kind, id, runs, Optional.of(its));
    }
}
