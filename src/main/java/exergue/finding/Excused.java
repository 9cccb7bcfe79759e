package exergue.finding;

import java.util.Comparator;

/**
 * A finding that an entry excuses. It is no longer among the findings, and is never lost either.
 *
 * @param finding as it was raised
 * @param because the reason as the author wrote it
 * @param where   the reason was written
 */
public record Excused(Finding finding, String because, Place where) implements Comparable<Excused> {

    private static final Comparator<Excused> ORDER = Comparator.comparing(Excused::finding).thenComparing(Excused::where);

    @Override
    public int compareTo(Excused other) {
        return ORDER.compare(this, other);
    }
}
