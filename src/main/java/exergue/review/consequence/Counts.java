package exergue.review.consequence;

import exergue.model.Catalogue;
import exergue.model.NaturalOrder;
import exergue.review.change.Consequence.Counted;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How many coins and types there are, and how many coins of each type that both catalogues have. */
final class Counts {

    private Counts() { }

    static List<Counted> of(TwoStates states) {
        List<Counted> counts = new ArrayList<>();
        add("coins", states.before().coins().size(), states.after().coins().size(), counts);
        add("types", states.before().types().size(), states.after().types().size(), counts);
        Map<String, Integer> old = byType(states.before());
        Map<String, Integer> now = byType(states.after());
        now.forEach((type, count) -> {
            if (old.containsKey(type)) {
                add("coins of type " + type, old.get(type), count, counts);
            }
        });
        return counts;
    }

    private static void add(String of, int before, int after, List<Counted> into) {
        if (before != after) {
            into.add(new Counted(of, before, after));
        }
    }

    private static Map<String, Integer> byType(Catalogue catalogue) {
        Map<String, Integer> counts = new TreeMap<>(NaturalOrder.INSTANCE);
        catalogue.types().forEach(type -> counts.put(type.id().value(), 0));
        catalogue.coins().forEach(coin -> counts.computeIfPresent(coin.type().value(), (type, count) -> count + 1));
        return counts;
    }
}
