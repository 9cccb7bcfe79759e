package exergue.edition;

import exergue.measure.Kind;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.HouseStyle.CoinOrder;
import exergue.model.NaturalOrder;
import exergue.model.ReadingChoice;
import exergue.model.Type;
import exergue.model.Written;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Types and their coins in the order of the book.
 *
 * <p>Mints as in {@code mints.yaml}. Within a mint the types without a ruler stand first, straight under the mint's
 * heading, where nobody can take them for the ruler's before them; then the rulers as in {@code rulers.yaml}. Within a
 * ruler the types without an issue stand first for the same reason, whatever their {@code order}; then those with an
 * {@code order}, then those without; equals by id in natural order. Coins as the house says: by id; by obverse die,
 * then reverse die, those without dies last; or by weight, the heaviest first, those without last. A mint or ruler that
 * is not declared comes after all others, so that no coin is lost.
 *
 * @param types in order
 */
public record BookOrder(List<TypeInBook> types) {

    /** @param coins in order; empty for a type known from literature only */
    public record TypeInBook(Type type, List<Coin> coins) {
        public TypeInBook {
            coins = List.copyOf(coins);
        }
    }

    public BookOrder {
        types = List.copyOf(types);
    }

    public static BookOrder of(Catalogue catalogue) {
        Map<String, List<Coin>> coins = new HashMap<>();
        for (Coin coin : catalogue.coins()) {
            coins.computeIfAbsent(coin.type().value(), id -> new ArrayList<>()).add(coin);
        }
        List<Type> types = new ArrayList<>(catalogue.types());
        types.sort(typeOrder(catalogue));
        List<TypeInBook> inBook = new ArrayList<>();
        for (Type type : types) {
            List<Coin> ofType = coins.getOrDefault(type.id().value(), new ArrayList<>());
            ofType.sort(coinOrder(catalogue, type));
            inBook.add(new TypeInBook(type, List.copyOf(ofType)));
        }
        return new BookOrder(inBook);
    }

    private static Comparator<Type> typeOrder(Catalogue catalogue) {
        Map<String, Integer> mints = ranks(catalogue.mints().keySet());
        Map<String, Integer> rulers = ranks(catalogue.rulers().keySet());
        Function<Type, String> ruler = type -> type.ruler().map(Written::value).orElse("");
        return Comparator
                .comparingInt((Type type) -> mints.getOrDefault(type.mint().value(), Integer.MAX_VALUE))
                .thenComparing(type -> type.mint().value(), NaturalOrder.INSTANCE)
                .thenComparingInt(type -> type.ruler().isEmpty() ? -1
                        : rulers.getOrDefault(ruler.apply(type), Integer.MAX_VALUE))
                .thenComparing(ruler, NaturalOrder.INSTANCE)
                .thenComparing(type -> type.issue().isPresent())
                .thenComparingInt(type -> type.order().map(Written::value).orElse(Integer.MAX_VALUE))
                .thenComparing(type -> type.id().value(), NaturalOrder.INSTANCE);
    }

    private static Map<String, Integer> ranks(Collection<String> ids) {
        Map<String, Integer> ranks = new HashMap<>();
        for (String id : ids) {
            ranks.put(id, ranks.size());
        }
        return ranks;
    }

    private static Comparator<Coin> coinOrder(Catalogue catalogue, Type type) {
        Comparator<Coin> byId = Comparator.comparing(coin -> coin.id().value(), NaturalOrder.INSTANCE);
        CoinOrder order = catalogue.style().coinOrder();
        return switch (order) {
            case BY_ID -> byId;
            case BY_DIES -> byDie(Coin.Dies::obverse).thenComparing(byDie(Coin.Dies::reverse)).thenComparing(byId);
            case BY_WEIGHT -> byWeight(ReadingChoice.of(catalogue.style()), type).thenComparing(byId);
        };
    }

    private static Comparator<Coin> byDie(Function<Coin.Dies, Optional<Written<String>>> side) {
        return Comparator.comparing(coin -> coin.dies().flatMap(side).map(Written::value).orElse(null),
                Comparator.nullsLast(NaturalOrder.INSTANCE));
    }

    private static Comparator<Coin> byWeight(ReadingChoice choice, Type type) {
        Function<Coin, BigDecimal> weight = coin -> choice.choose(coin, type, Kind.WEIGHT).figure()
                .map(figure -> figure.first().value()).orElse(null);
        return Comparator.comparing(weight, Comparator.nullsLast(Comparator.reverseOrder()));
    }
}
