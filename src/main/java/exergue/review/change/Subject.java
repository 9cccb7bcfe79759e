package exergue.review.change;

import exergue.model.NaturalOrder;
import exergue.review.content.Section;
import java.util.Comparator;
import java.util.Optional;

/**
 * An entry that is spoken of.
 *
 * @param id     empty for what a catalogue has one of, such as its house style
 * @param number catalogue number of a coin
 */
public record Subject(Section section, String id, Optional<Integer> number) implements Comparable<Subject> {

    private static final Comparator<Subject> ORDER = Comparator.comparing(Subject::section)
            .thenComparing(subject -> subject.number().orElse(Integer.MAX_VALUE))
            .thenComparing(Subject::id, NaturalOrder.INSTANCE);

    /** By section, then by number, then by id. */
    @Override
    public int compareTo(Subject other) {
        return ORDER.compare(this, other);
    }
}
