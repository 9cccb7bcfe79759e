package exergue.study.die;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Combinations that hang together: coins of one chain were struck in one workshop over a stretch of time, and their dies
 * follow each other. The order is that in which lines between obverses and reverses cross least, and where recorded states
 * tell which die came first, it goes first.
 *
 * @param obverses     in order
 * @param reverses     in order
 * @param combinations in the order of their obverses, then reverses
 * @param crossings    how often lines cross when the dies stand in this order in two rows
 * @param contradicted dies that the recorded states put before and after each other; none if the states agree
 */
public record DieChain(List<Die> obverses, List<Die> reverses, List<Combination> combinations, int crossings,
                       List<Die> contradicted) {

    /** By the first of their combinations in natural order, as dies are mostly numbered in the order the author takes them to have. */
    static final Comparator<DieChain> IN_ORDER = Comparator
            .comparing(chain -> chain.combinations().stream().map(Combination::pair).min(Comparator.naturalOrder()).orElseThrow());

    public DieChain {
        obverses = List.copyOf(obverses);
        reverses = List.copyOf(reverses);
        combinations = List.copyOf(combinations);
        contradicted = List.copyOf(contradicted);
    }

    /** @param together two or more combinations in natural order; @param usage of all dies of the study */
    static DieChain of(List<Combination> together, List<DieUsage> usage) {
        Set<Die> dies = together.stream().flatMap(combination -> Stream.of(combination.pair().obverse(),
                combination.pair().reverse())).collect(Collectors.toSet());
        Precedence precedence = Precedence.of(usage.stream().filter(use -> dies.contains(use.die()))
                .flatMap(use -> use.order().stream()).toList());
        TwoRows rows = FewCrossings.arrange(together, precedence);
        Map<Die, Integer> obverses = TwoRows.places(rows.obverses());
        Map<Die, Integer> reverses = TwoRows.places(rows.reverses());
        List<Combination> inOrder = together.stream().sorted(Comparator
                .comparing((Combination combination) -> obverses.get(combination.pair().obverse()))
                .thenComparing(combination -> reverses.get(combination.pair().reverse()))).toList();
        return new DieChain(rows.obverses(), rows.reverses(), inOrder, rows.crossings(together), precedence.contradicted());
    }

    /** How many coins. */
    public int coins() {
        return combinations.stream().mapToInt(combination -> combination.coins().size()).sum();
    }
}
