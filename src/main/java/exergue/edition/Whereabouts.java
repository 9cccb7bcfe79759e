package exergue.edition;

import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Collection;
import exergue.model.FindSpot;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where a coin is or was found, as printed. The exact place of a find is printed only where its file allows it. */
final class Whereabouts {

    private final Map<String, Collection> collections;
    private final Map<String, FindSpot> spots;

    Whereabouts(Catalogue catalogue) {
        this.collections = catalogue.collections();
        this.spots = catalogue.findSpots();
    }

    /** The collection and its number if the coin is in one, otherwise the find; empty if neither is known. */
    String of(Coin coin) {
        return coin.holding().map(this::holding).or(() -> find(coin)).orElse("");
    }

    /** The find, where the collection has taken its place in the row. */
    Optional<String> besides(Coin coin) {
        return coin.holding().isPresent() ? find(coin) : Optional.empty();
    }

    /** The collection and its number; empty where no collection is named. */
    String keeping(Coin coin) {
        return coin.holding().map(this::holding).orElse("");
    }

    /** The find with its number first, for entries that go by it; empty where no find is recorded. */
    String numberAndFind(Coin coin) {
        return coin.find().map(find -> {
            List<String> words = new ArrayList<>();
            find.number().map(number -> Unbroken.number(number.value())).ifPresent(words::add);
            words.addAll(place(find));
            return String.join(", ", words);
        }).orElse("");
    }

    private String holding(Coin.Holding holding) {
        Collection collection = collections.get(holding.collection().value());
        String sign = collection == null ? holding.collection().value() : collection.sign().value();
        return sign + holding.number().map(number -> "\u00A0" + Unbroken.number(number.value())).orElse("");
    }

    private Optional<String> find(Coin coin) {
        return coin.find().map(find -> {
            List<String> words = new ArrayList<>(place(find));
            find.number().map(number -> Unbroken.number(number.value())).ifPresent(words::add);
            return String.join(", ", words);
        });
    }

    private List<String> place(Coin.Find find) {
        List<String> words = new ArrayList<>();
        FindSpot spot = spots.get(find.spot().value());
        words.add(spot == null ? find.spot().value() : spot.name().value());
        if (spot != null && spot.mayPrint()) {
            spot.exact().map(Written::value).ifPresent(words::add);
        }
        find.context().map(Written::value).ifPresent(words::add);
        return words;
    }
}
