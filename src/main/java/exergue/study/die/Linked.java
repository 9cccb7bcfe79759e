package exergue.study.die;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Sorts combinations into those that hang together by common dies: two are of one group if a row of shared dies joins them. */
final class Linked {

    private final Map<Die, Die> parents = new HashMap<>();

    private Linked() { }

    /** Groups in the order of their first combination, and combinations within them in the order given. */
    static List<List<Combination>> groups(List<Combination> combinations) {
        Linked linked = new Linked();
        combinations.forEach(combination -> linked.join(combination.pair()));
        Map<Die, List<Combination>> groups = new LinkedHashMap<>();
        combinations.forEach(combination -> groups
                .computeIfAbsent(linked.root(combination.pair().obverse()), any -> new ArrayList<>()).add(combination));
        return List.copyOf(groups.values());
    }

    private void join(DiePair pair) {
        Die one = root(pair.obverse());
        Die other = root(pair.reverse());
        if (!one.equals(other)) {
            parents.put(other, one);
        }
    }

    /** Every step on the way is then tied to the root, so that the next way is short. */
    private Die root(Die die) {
        Die root = die;
        while (parents.containsKey(root)) {
            root = parents.get(root);
        }
        Die step = die;
        while (!step.equals(root)) {
            Die next = parents.get(step);
            parents.put(step, root);
            step = next;
        }
        return root;
    }
}
