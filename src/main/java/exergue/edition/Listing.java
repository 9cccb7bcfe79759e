package exergue.edition;

import exergue.model.Inline;
import java.util.List;
import java.util.Optional;

/**
 * Short lines under one heading, to be set in columns: a concordance with one work, an index.
 *
 * @param id      anchor of the heading
 * @param heads   what stands over every column of a concordance; empty for an index
 */
public record Listing(String id, List<Inline> heading, Optional<Heads> heads, List<Line> lines) {

    public Listing {
        heading = List.copyOf(heading);
        lines = List.copyOf(lines);
    }

    /** Over what is looked up, and over where it is found. */
    public record Heads(String left, String right) { }

    /**
     * @param opensGroup some room stands before it: an index has come to the next letter
     * @param words      what is looked up
     * @param numbers    where it is found
     */
    public record Line(boolean opensGroup, List<Inline> words, List<Inline> numbers) {

        public Line {
            words = List.copyOf(words);
            numbers = List.copyOf(numbers);
        }
    }
}
