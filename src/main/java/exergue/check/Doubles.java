package exergue.check;

import exergue.finding.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Finds what bears a mark that only one may bear: an id, a number. */
public final class Doubles {

    private Doubles() { }

    /** What must not occur twice, and where it was written. */
    public record Mark(String text, Place place) { }

    /**
     * Two that bear the same mark.
     *
     * @param thing the later of the two
     * @param mark  its mark
     * @param first the mark of the first that bears it
     * @param firstThing the first that bears it
     */
    public record Pair<T>(T thing, Mark mark, Mark first, T firstThing) { }

    private record Marked<T>(T thing, Mark mark) { }

    /** Every thing but the first that bears its mark; first is what stands first by file, line and column. */
    public static <T> List<Pair<T>> among(List<T> things, Function<T, Optional<Mark>> markOf) {
        List<Marked<T>> marked = new ArrayList<>();
        for (T thing : things) {
            markOf.apply(thing).ifPresent(mark -> marked.add(new Marked<>(thing, mark)));
        }
        marked.sort(Comparator.comparing((Marked<T> one) -> one.mark().place()));
        Map<String, Marked<T>> firsts = new HashMap<>();
        List<Pair<T>> pairs = new ArrayList<>();
        for (Marked<T> one : marked) {
            Marked<T> first = firsts.putIfAbsent(one.mark().text(), one);
            if (first != null) {
                pairs.add(new Pair<>(one.thing(), one.mark(), first.mark(), first.thing()));
            }
        }
        return pairs;
    }
}
