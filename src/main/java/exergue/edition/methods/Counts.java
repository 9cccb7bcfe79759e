package exergue.edition.methods;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Counting things, with a fixed order of the result whatever the order of counting. */
final class Counts<T> {

    private final Map<T, Integer> counts;
    private final Comparator<T> order;

    Counts(Comparator<T> order) {
        this.counts = new TreeMap<>(order);
        this.order = order;
    }

    void add(T thing) {
        counts.merge(thing, 1, Integer::sum);
    }

    /** The commonest first, equals in their order. */
    List<Tally.Count<T>> commonestFirst() {
        List<Tally.Count<T>> sorted = new ArrayList<>();
        counts.forEach((thing, times) -> sorted.add(new Tally.Count<>(thing, times)));
        sorted.sort(Comparator.comparingInt((Tally.Count<T> count) -> -count.times())
                .thenComparing(Tally.Count::thing, order));
        return List.copyOf(sorted);
    }
}
