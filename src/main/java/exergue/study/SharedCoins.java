package exergue.study;

import exergue.measure.Convention;
import exergue.model.Coin;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Coins by the two hands that have both measured them, looked through once however many hands there are. */
final class SharedCoins {

    private final Map<String, Map<String, List<Coin>>> coins = new HashMap<>();

    private SharedCoins() { }

    static SharedCoins of(List<Coin> coins) {
        SharedCoins shared = new SharedCoins();
        for (Coin coin : coins) {
            List<String> hands = Stream.concat(coin.measured().stream(), coin.alsoMeasured().stream())
                    .map(block -> block.by().value()).distinct().toList();
            for (String one : hands) {
                hands.stream().filter(other -> !other.equals(one)).forEach(other -> shared.add(one, other, coin));
            }
        }
        return shared;
    }

    TwoHands compare(Convention first, Convention second) {
        return TwoHands.of(first, second,
                coins.getOrDefault(first.id(), Map.of()).getOrDefault(second.id(), List.of()));
    }

    private void add(String one, String other, Coin coin) {
        coins.computeIfAbsent(one, hand -> new HashMap<>()).computeIfAbsent(other, hand -> new ArrayList<>()).add(coin);
    }
}
