package exergue.edition.methods;

import exergue.measure.Kind;
import exergue.model.ReadingChoice.Status;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The counts an author can have written into the methods chapter by name, in braces: {@code {coins}},
 * {@code {weights of bench}}, {@code {coins without weight}}. Coins of a convention are those of which it has any
 * figure; weights, diameters and die-axes are printed figures.
 */
public final class Counters {

    private final Map<String, Integer> counts = new LinkedHashMap<>();

    private Counters() { }

    public static Counters of(Tally tally) {
        Counters counters = new Counters();
        counters.counts.put("coins", tally.coins());
        tally.figures().forEach((kind, count) -> counters.counts.put(plural(kind), count));
        for (Hand hand : tally.hands()) {
            String of = " of " + hand.convention().id();
            counters.counts.put("coins" + of, hand.coins());
            tally.figures().keySet().forEach(kind -> counters.counts.put(plural(kind) + of, hand.printed(kind)));
        }
        for (Kind kind : tally.figures().keySet()) {
            counters.counts.put("coins without " + kind.word(), tally.coins() - tally.figures(kind));
            counters.counts.put("coins with illegible " + kind.word(), tally.absent(kind, Status.ILLEGIBLE));
        }
        counters.counts.put("damaged coins", tally.damage().coins());
        counters.counts.put("coins measured twice", tally.readTwice());
        return counters;
    }

    public Optional<Integer> count(String name) {
        return Optional.ofNullable(counts.get(name));
    }

    /** Every counter of this catalogue with its count, in a fixed order. */
    public Map<String, Integer> all() {
        return Collections.unmodifiableMap(counts);
    }

    private static String plural(Kind kind) {
        return switch (kind) {
            case WEIGHT -> "weights";
            case DIAMETER -> "diameters";
            case AXIS -> "die-axes";
            case THICKNESS -> "thicknesses";
            case DENSITY -> "densities";
            case SURFACE -> "surfaces";
        };
    }
}
