package exergue.check;

import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Coin;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

/** How many measurements, and how many figures of each kind, a catalogue has under each convention. */
public final class ConventionUse {

    private final Map<String, Integer> measurements = new HashMap<>();
    private final Map<String, Map<Kind, Integer>> figures = new HashMap<>();

    private ConventionUse() { }

    public static ConventionUse in(Catalogue catalogue) {
        ConventionUse use = new ConventionUse();
        for (Coin coin : catalogue.coins()) {
            Hand.of(coin).forEach(use::count);
        }
        return use;
    }

    private void count(Hand hand) {
        String id = hand.measurement().by().value();
        measurements.merge(id, 1, Integer::sum);
        hand.measurement().readings().forEach((kind, written) -> {
            if (written.value() instanceof Reading.Read) {
                figures.computeIfAbsent(id, any -> new EnumMap<>(Kind.class)).merge(kind, 1, Integer::sum);
            }
        });
    }

    /** Measurements under a convention, with or without figures. */
    public int of(String convention) {
        return measurements.getOrDefault(convention, 0);
    }

    /** Figures of one kind under a convention. */
    public int of(String convention, Kind kind) {
        return figures.getOrDefault(convention, Map.of()).getOrDefault(kind, 0);
    }
}
