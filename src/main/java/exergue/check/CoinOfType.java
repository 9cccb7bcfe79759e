package exergue.check;

import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Type;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A coin with the type it points to. */
public record CoinOfType(Coin coin, Type type) {

    /** Every coin whose type is known, in the order of the catalogue. */
    public static List<CoinOfType> all(Catalogue catalogue) {
        Map<String, Type> types = new HashMap<>();
        catalogue.types().forEach(type -> types.putIfAbsent(type.id().value(), type));
        List<CoinOfType> all = new ArrayList<>();
        for (Coin coin : catalogue.coins()) {
            Type type = types.get(coin.type().value());
            if (type != null) {
                all.add(new CoinOfType(coin, type));
            }
        }
        return all;
    }
}
