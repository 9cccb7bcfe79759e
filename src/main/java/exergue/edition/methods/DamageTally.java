package exergue.edition.methods;

import exergue.measure.Kind;
import exergue.model.Coin;
import exergue.model.Damage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Damaged coins and what is left out of weight statistics.
 *
 * @param coins     that are damaged
 * @param kinds     of damage, the commonest first; a coin can have several
 * @param leftOut   printed weights of damaged coins that do not count
 * @param exceptions where the author's word goes against the rule
 */
public record DamageTally(int coins, List<Tally.Count<Damage>> kinds, int leftOut, List<Excepted> exceptions) {
    public DamageTally {
        kinds = List.copyOf(kinds);
        exceptions = List.copyOf(exceptions);
    }


    /**
     * @param numbers of the coins, in the order of the book
     * @param counts  true for damaged coins whose weight counts, false for undamaged ones whose weight does not
     */
    public record Excepted(List<String> numbers, boolean counts, String why) {
        public Excepted {
            numbers = List.copyOf(numbers);
        }
    }

    /** True where any printed weight carries the sign for weights that do not count. */
    public boolean signUsed() {
        return leftOut > 0 || exceptions.stream().anyMatch(exception -> !exception.counts());
    }

    static DamageTally of(List<Counted> coins) {
        Counts<Damage> kinds = new Counts<>(Enum::compareTo);
        int damaged = 0;
        int leftOut = 0;
        for (Counted counted : coins) {
            Coin coin = counted.coin();
            if (!coin.damage().isEmpty()) {
                damaged++;
                coin.damage().stream().map(damage -> damage.value()).distinct().forEach(kinds::add);
                leftOut += !coin.weightInStatistics() && counted.figure(Kind.WEIGHT).isPresent() ? 1 : 0;
            }
        }
        return new DamageTally(damaged, kinds.commonestFirst(), leftOut, exceptions(coins));
    }

    private static List<Excepted> exceptions(List<Counted> coins) {
        Map<String, List<Counted>> byReason = new LinkedHashMap<>();
        for (Counted counted : coins) {
            Coin coin = counted.coin();
            boolean againstRule = coin.weightInStatistics() != coin.damage().isEmpty();
            if (againstRule && counted.figure(Kind.WEIGHT).isPresent()) {
                String why = coin.weightCounts().orElseThrow().why().value();
                byReason.computeIfAbsent(coin.weightInStatistics() + why, key -> new ArrayList<>()).add(counted);
            }
        }
        return byReason.values().stream().map(same -> new Excepted(
                same.stream().map(Counted::number).toList(), same.get(0).coin().weightInStatistics(),
                same.get(0).coin().weightCounts().orElseThrow().why().value())).toList();
    }
}
