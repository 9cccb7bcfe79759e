package exergue.model;

import exergue.measure.Kind;
import java.util.function.Predicate;

/** Something that the entry of a coin can have, named as the entry names it. */
public enum CoinPart {
    WEIGHT("weight", mentions(Kind.WEIGHT)), DIAMETER("diameter", mentions(Kind.DIAMETER)), AXIS("axis", mentions(Kind.AXIS)),
    THICKNESS("thickness", mentions(Kind.THICKNESS)), DENSITY("density", mentions(Kind.DENSITY)),
    DIES("dies", coin -> coin.dies().isPresent()),
    COLLECTION("collection", coin -> coin.holding().isPresent()),
    COLLECTION_NUMBER("collection-number", coin -> coin.holding().flatMap(Coin.Holding::number).isPresent()),
    FIND("find", coin -> coin.find().isPresent()),
    FIND_CONTEXT("find-context", coin -> coin.find().flatMap(Coin.Find::context).isPresent()),
    FIND_NUMBER("find-number", coin -> coin.find().flatMap(Coin.Find::number).isPresent()),
    PROVENANCE("provenance", coin -> !coin.provenance().isEmpty()),
    REFERENCES("references", coin -> !coin.references().isEmpty()),
    PHOTOGRAPH("photograph", coin -> coin.photograph().isPresent()),
    CREDIT("credit", coin -> coin.photograph().flatMap(Coin.Photograph::credit).isPresent()),
    PERMISSION("permission", coin -> coin.photograph().flatMap(Coin.Photograph::permission).isPresent()),
    NOTE("note", coin -> !coin.note().isEmpty());

    private final String word;
    private final Predicate<Coin> test;

    CoinPart(String word, Predicate<Coin> test) {
        this.word = word;
        this.test = test;
    }

    private static Predicate<Coin> mentions(Kind kind) {
        return coin -> coin.measured().filter(block -> block.mentions(kind)).isPresent()
                || coin.alsoMeasured().stream().anyMatch(block -> block.mentions(kind));
    }

    public String word() {
        return word;
    }

    public boolean isIn(Coin coin) {
        return test.test(coin);
    }
}
