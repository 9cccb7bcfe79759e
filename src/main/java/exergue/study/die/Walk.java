package exergue.study.die;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The dies of a chain as one meets them on a walk from one end of it to the other, going into every side branch before going
 * on. Where a chain has no rings and its branches are one die long, lines between dies in this order do not cross.
 */
final class Walk {

    private final Map<Die, List<Die>> partners;

    private Walk(Map<Die, List<Die>> partners) {
        this.partners = partners;
    }

    /** @param partners of each die of one chain, in natural order */
    static List<Die> through(Map<Die, List<Die>> partners) {
        Walk walk = new Walk(partners);
        Die somewhere = partners.keySet().stream().min(Comparator.naturalOrder()).orElseThrow();
        Die end = walk.farthest(somewhere);
        return walk.from(end, walk.distances(walk.farthest(end)));
    }

    private List<Die> from(Die start, Map<Die, Integer> toGo) {
        Set<Die> met = new LinkedHashSet<>();
        Deque<Die> next = new ArrayDeque<>(List.of(start));
        while (!next.isEmpty()) {
            Die die = next.pop();
            if (met.add(die)) {
                // the last to be pushed is the first to be met: what lies farthest from the goal
                partners.get(die).stream().sorted(Comparator.comparing(toGo::get)).forEach(next::push);
            }
        }
        return new ArrayList<>(met);
    }

    /** Of several that are equally far, the first in natural order. */
    private Die farthest(Die from) {
        Map<Die, Integer> distances = distances(from);
        return distances.keySet().stream().max(Comparator.comparing((Die die) -> distances.get(die))
                .thenComparing(Comparator.<Die>naturalOrder().reversed())).orElseThrow();
    }

    private Map<Die, Integer> distances(Die from) {
        Map<Die, Integer> distances = new HashMap<>(Map.of(from, 0));
        Deque<Die> next = new ArrayDeque<>(List.of(from));
        while (!next.isEmpty()) {
            Die die = next.remove();
            for (Die partner : partners.get(die)) {
                if (distances.putIfAbsent(partner, distances.get(die) + 1) == null) {
                    next.add(partner);
                }
            }
        }
        return distances;
    }
}
