package exergue.study.die;

import java.util.Collection;
import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How many dies struck how many of the coins of a sample: all that the estimators know.
 *
 * @param diesByCoins for each number of coins how many dies are known from so many; numbers without a die are left out
 */
public record DieCounts(SortedMap<Integer, Integer> diesByCoins) {

    public DieCounts {
        diesByCoins = Collections.unmodifiableSortedMap(new TreeMap<>(diesByCoins));
    }

    /** @param coinsOfEach how many coins are known of each die; none may be 0 */
    public static DieCounts of(Collection<Integer> coinsOfEach) {
        SortedMap<Integer, Integer> counted = new TreeMap<>();
        coinsOfEach.forEach(coins -> counted.merge(coins, 1, Integer::sum));
        return new DieCounts(counted);
    }

    static DieCounts ofDies(Collection<Die> dieOfEachCoin) {
        Map<Die, Integer> coins = new TreeMap<>();
        dieOfEachCoin.forEach(die -> coins.merge(die, 1, Integer::sum));
        return of(coins.values());
    }

    /** n: coins whose die is known. */
    public int coins() {
        return diesByCoins.entrySet().stream().mapToInt(entry -> entry.getKey() * entry.getValue()).sum();
    }

    /** d: different dies. */
    public int dies() {
        return diesByCoins.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** d1: dies known from one coin. */
    public int singles() {
        return diesByCoins.getOrDefault(1, 0);
    }

    /** d2: dies known from two coins. */
    public int pairs() {
        return diesByCoins.getOrDefault(2, 0);
    }
}
