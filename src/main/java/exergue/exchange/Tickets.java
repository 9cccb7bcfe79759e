package exergue.exchange;

import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Written;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** What may stand on a ticket: the id of a coin, or its number in its collection or of its find, where no other coin has that number. */
final class Tickets {

    private final Map<String, String> coins = new TreeMap<>();

    Tickets(Catalogue catalogue) {
        Set<String> shared = new TreeSet<>();
        for (Coin coin : catalogue.coins()) {
            coin.holding().flatMap(Coin.Holding::number).ifPresent(number -> add(number, coin, shared));
            coin.find().flatMap(Coin.Find::number).ifPresent(number -> add(number, coin, shared));
        }
        shared.forEach(coins::remove);
        catalogue.coins().forEach(coin -> coins.put(coin.id().value(), coin.id().value()));
    }

    private void add(Written<String> number, Coin coin, Set<String> shared) {
        String before = coins.put(number.value(), coin.id().value());
        if (before != null && !before.equals(coin.id().value())) {
            shared.add(number.value());
        }
    }

    /** Id of the coin. */
    Optional<String> coin(String ticket) {
        return Optional.ofNullable(coins.get(ticket));
    }

    Collection<String> known() {
        return coins.keySet();
    }
}
