package exergue.study.die;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Which dies struck a group of coins and how they hang together. The order of the coins makes no difference.
 *
 * @param coins        all of the group, with dies or without
 * @param combinations every pair of dies that struck a coin, in natural order
 * @param chains       combinations that hang together by a die, each chain in its own order; chains by their first pair
 * @param alone        combinations of which neither die is known with another
 * @param halfKnown    coins of which one die alone could be told
 * @param usage        dies of which more than one state is recorded, in natural order
 */
public record DieStudy(int coins, List<Combination> combinations, List<DieChain> chains, List<Combination> alone,
                       List<StruckCoin> halfKnown, List<DieUsage> usage, DieCounts obverse, DieCounts reverse) {

    public DieStudy {
        combinations = List.copyOf(combinations);
        chains = List.copyOf(chains);
        alone = List.copyOf(alone);
        halfKnown = List.copyOf(halfKnown);
        usage = List.copyOf(usage);
    }

    public static DieStudy of(Collection<StruckCoin> coins) {
        List<StruckCoin> sorted = coins.stream().sorted(StruckCoin.BY_ID).toList();
        List<Combination> combinations = combinations(sorted);
        List<DieUsage> usage = DieUsage.of(sorted);
        List<DieChain> chains = new ArrayList<>();
        List<Combination> alone = new ArrayList<>();
        for (List<Combination> together : Linked.groups(combinations)) {
            if (together.size() == 1) {
                alone.add(together.get(0));
            } else {
                chains.add(DieChain.of(together, usage));
            }
        }
        chains.sort(DieChain.IN_ORDER);
        return new DieStudy(sorted.size(), combinations, chains, alone,
                sorted.stream().filter(coin -> coin.obverse().isPresent() != coin.reverse().isPresent()).toList(),
                usage, counts(sorted, DieSide.OBVERSE), counts(sorted, DieSide.REVERSE));
    }

    /** Every pair of dies with its coins, in natural order. */
    static List<Combination> combinations(List<StruckCoin> coins) {
        Map<DiePair, List<String>> struck = new TreeMap<>();
        coins.forEach(coin -> coin.pair().ifPresent(pair -> struck.computeIfAbsent(pair, any -> new ArrayList<>()).add(coin.id())));
        return struck.entrySet().stream().map(entry -> new Combination(entry.getKey(), entry.getValue())).toList();
    }

    public DieCounts counts(DieSide side) {
        return side == DieSide.OBVERSE ? obverse : reverse;
    }

    /** Reverse dies for each obverse die; empty where no obverse die is known. */
    public OptionalDouble reversesToObverse() {
        return obverse.dies() == 0 || reverse.dies() == 0 ? OptionalDouble.empty()
                : OptionalDouble.of((double) reverse.dies() / obverse.dies());
    }

    private static DieCounts counts(List<StruckCoin> coins, DieSide side) {
        return DieCounts.ofDies(coins.stream().flatMap(coin -> coin.of(side).stream()).map(DieOfCoin::die).toList());
    }
}
