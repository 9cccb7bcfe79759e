package exergue.model;

import java.util.function.BiPredicate;

/** Kinds of coins of which a house wants different things. */
public enum CoinKind {
    ANY("coins", "every coin", (coin, type) -> true),
    FOUND("found-coins", "a coin with a find", (coin, type) -> coin.find().isPresent()),
    HELD("held-coins", "a coin in a collection", (coin, type) -> coin.holding().isPresent()),
    PHOTOGRAPHED("photographed-coins", "a coin with a photograph", (coin, type) -> coin.photograph().isPresent()),
    STRUCK("struck-coins", "a struck coin", (coin, type) -> type.making().value() == Making.STRUCK),
    CAST("cast-coins", "a cast coin", (coin, type) -> type.making().value() == Making.CAST);

    private final String key;
    private final String words;
    private final BiPredicate<Coin, Type> test;

    CoinKind(String key, String words, BiPredicate<Coin, Type> test) {
        this.key = key;
        this.words = words;
        this.test = test;
    }

    /** As the house style names it. */
    public String key() {
        return key;
    }

    /** Within a sentence: "a struck coin". */
    public String words() {
        return words;
    }

    public boolean has(Coin coin, Type type) {
        return test.test(coin, type);
    }
}
