package exergue.exchange.list;

import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Written;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which coin of the catalogue a row is: the one of its id, or the one of its number in its collection. */
final class KnownCoins {

    private final Map<String, Coin> byId = new HashMap<>();
    private final Map<List<String>, Coin> byNumber = new HashMap<>();

    KnownCoins(Catalogue catalogue) {
        for (Coin coin : catalogue.coins()) {
            byId.put(coin.id().value(), coin);
            coin.holding().ifPresent(holding -> holding.number().map(Written::value).ifPresent(number ->
                    byNumber.put(List.of(holding.collection().value(), number), coin)));
        }
    }

    /** None for a new coin; two where its id and its number are those of different coins. */
    Set<Coin> of(Draft draft) {
        Set<Coin> found = new LinkedHashSet<>();
        if (byId.containsKey(draft.id())) {
            found.add(byId.get(draft.id()));
        }
        EntryNode.Keys entry = (EntryNode.Keys) draft.entry();
        if (entry.byKey().get("collection") instanceof EntryNode.Keys holding && holding.byKey().get("id") instanceof EntryNode.Words id
                && holding.byKey().get("number") instanceof EntryNode.Words number) {
            Coin numbered = byNumber.get(List.of(id.text(), number.text()));
            if (numbered != null) {
                found.add(numbered);
            }
        }
        return found;
    }
}
