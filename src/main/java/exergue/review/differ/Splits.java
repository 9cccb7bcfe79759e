package exergue.review.differ;

import exergue.model.Coin;
import exergue.model.NaturalOrder;
import exergue.review.content.Contents;
import exergue.review.content.Section;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Entries of one catalogue that are several in the other. A type was split if its coins now belong to several, one of
 * them new; a coin, if several are near to it, one of them new. What was joined is what was split seen from the other side.
 */
final class Splits {

    private final Contents from;
    private final Contents to;
    private final Map<String, String> coins;
    private final Map<String, String> types;
    private final Set<String> knownCoins;
    private final Set<String> knownTypes;

    /** @param coins and types: what became of each id that is in both catalogues, from {@code from} to {@code to} */
    Splits(Contents from, Contents to, Map<String, String> coins, Map<String, String> types) {
        this.from = from;
        this.to = to;
        this.coins = coins;
        this.types = types;
        this.knownCoins = new HashSet<>(coins.values());
        this.knownTypes = new HashSet<>(types.values());
    }

    /** Ids of the types that an old one has become, for each that has become several. */
    Map<String, SortedSet<String>> types() {
        Map<String, SortedSet<String>> into = new LinkedHashMap<>();
        Map<String, Object> now = to.in(Section.COINS);
        from.in(Section.COINS).forEach((id, entry) -> {
            if (now.get(coins.getOrDefault(id, "")) instanceof Coin coin && entry instanceof Coin old) {
                into.computeIfAbsent(old.type().value(), any -> new TreeSet<>(NaturalOrder.INSTANCE)).add(coin.type().value());
            }
        });
        into.keySet().removeIf(type -> !from.in(Section.TYPES).containsKey(type));
        into.values().forEach(several -> several.removeIf(type -> isOldOther(type)));
        into.forEach((type, several) -> {
            if (types.containsKey(type)) {
                several.add(types.get(type));
            }
        });
        into.values().removeIf(several -> several.size() < 2);
        return into;
    }

    /** A type that was there before: coins that have moved to it have moved, and nothing was split. */
    private boolean isOldOther(String type) {
        return !to.in(Section.TYPES).containsKey(type) || knownTypes.contains(type);
    }

    /** Ids of the coins that an old one has become, for each that has become several. */
    Map<String, SortedSet<String>> coins() {
        Map<String, Object> fresh = new LinkedHashMap<>(to.in(Section.COINS));
        fresh.keySet().removeIf(knownCoins::contains);
        Map<String, SortedSet<String>> into = new LinkedHashMap<>();
        for (Kin.Pair pair : Kin.pairs(from.in(Section.COINS), fresh)) {
            into.computeIfAbsent(pair.before(), any -> new TreeSet<>(NaturalOrder.INSTANCE)).add(pair.after());
        }
        into.forEach((coin, several) -> {
            if (coins.containsKey(coin)) {
                several.add(coins.get(coin));
            }
        });
        into.values().removeIf(several -> several.size() < 2);
        return new LinkedHashMap<>(new TreeMap<>(into));
    }
}
