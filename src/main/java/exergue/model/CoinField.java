package exergue.model;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/** What coins can be grouped by: a fact that an entry or its type gives once. */
public enum CoinField {

    TYPE("type", (coin, type) -> Optional.of(type.id())),
    MINT("mint", (coin, type) -> Optional.of(type.mint())),
    RULER("ruler", (coin, type) -> type.ruler()),
    ISSUE("issue", (coin, type) -> type.issue()),
    DENOMINATION("denomination", (coin, type) -> Optional.of(type.denomination())),
    METAL("metal", (coin, type) -> Optional.of(type.metal())),
    STANDARD("standard", (coin, type) -> type.standard()),
    MADE("made", (coin, type) -> Optional.of(new Written<>(type.making().value().word(), type.making().place()))),
    SHAPE("shape", (coin, type) -> Optional.of(new Written<>(type.shape().value().word(), type.shape().place()))),
    FIND_SPOT("find-spot", (coin, type) -> coin.find().map(Coin.Find::spot)),
    CONTEXT("context", (coin, type) -> coin.find().flatMap(Coin.Find::context)),
    COLLECTION("collection", (coin, type) -> coin.holding().map(Coin.Holding::collection)),
    HAND("hand", (coin, type) -> coin.measured().map(Measurement::by)),
    OBVERSE_DIE("obverse-die", (coin, type) -> coin.dies().flatMap(Coin.Dies::obverse)),
    REVERSE_DIE("reverse-die", (coin, type) -> coin.dies().flatMap(Coin.Dies::reverse)),
    COUNTERMARK("countermark", (coin, type) -> coin.countermark());

    private final String word;
    private final BiFunction<Coin, Type, Optional<Written<String>>> value;

    CoinField(String word, BiFunction<Coin, Type, Optional<Written<String>>> value) {
        this.word = word;
        this.value = value;
    }

    /** As a catalogue and the command line name it. */
    public String word() {
        return word;
    }

    /** Of one coin; empty where nothing is said. */
    public Optional<String> of(Coin coin, Type type) {
        return value.apply(coin, type).map(Written::value).filter(text -> !text.isEmpty());
    }

    public static Optional<CoinField> named(String word) {
        return Arrays.stream(values()).filter(field -> field.word.equals(word)).findFirst();
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(CoinField::word).toList();
    }
}
