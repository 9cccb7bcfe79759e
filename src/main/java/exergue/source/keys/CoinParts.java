package exergue.source.keys;

import exergue.dating.Dating;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.model.Coin;
import exergue.model.PrintScale;
import exergue.model.Provenance;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.PathTexts;
import exergue.source.shape.TextOr;
import exergue.source.shape.Texts;
import exergue.source.yaml.Scalar;
import java.util.Optional;

/** The small blocks inside a coin. */
final class CoinParts {

    static final Block<Coin.WeightCounts> WEIGHT_COUNTS = weightCounts();
    static final Block<Coin.Dies> DIES = dies();
    static final Block<Coin.Holding> HOLDING = holding();
    static final Block<Coin.Find> FIND = find();
    static final Block<Coin.Photograph> PHOTOGRAPH = photograph();

    static final TextOr<Provenance> PROVENANCE = new TextOr<>(Texts.WORDS, Provenance::of, provenance());

    private CoinParts() { }

    private static Block<Provenance> provenance() {
        Keys keys = new Keys("a step of a provenance");
        Key<Written<String>> words = keys.must("words", Texts.WORDS, "Owner, sale or gift, as printed.", "bought by the Museum, 1897");
        Key<Optional<Written<Dating>>> date = keys.may("date", Dates.EDTF, "When, in EDTF; only for the order.", "1897");
        Key<Optional<Written<String>>> under = keys.may("under", Texts.WORDS, "What the index of provenances has it under.",
                "Harrowgill cabinet");
        return keys.block(f -> new Provenance(f.get(words), f.get(date), f.get(under)));
    }

    private static Block<Coin.WeightCounts> weightCounts() {
        Keys keys = new Keys("whether a weight counts");
        Key<Written<Boolean>> counts = keys.must("counts", Texts.YES_OR_NO, "Whether the weight counts in statistics.", "yes");
        Key<Written<String>> why = keys.must("why", Texts.WORDS, "Why, in your words.", "the chip weighs next to nothing");
        return keys.block(f -> new Coin.WeightCounts(f.get(counts), f.get(why)));
    }

    private static Block<Coin.Dies> dies() {
        Keys keys = new Keys("the dies of a coin");
        Key<Optional<DieInState>> obverse = keys.may("obverse", die(), "Name of the obverse die; or its name and its state.", "O1");
        Key<Optional<DieInState>> reverse = keys.may("reverse", die(), "Name of the reverse die; or its name and its state.",
                "{die: R3, state: 2, flaw: \"a crack from the border to the wing\"}");
        return keys.block(f -> new Coin.Dies(f.get(obverse).map(DieInState::name), f.get(reverse).map(DieInState::name),
                f.get(obverse).flatMap(DieInState::state), f.get(reverse).flatMap(DieInState::state)));
    }

    /** A die as a coin names it. */
    private record DieInState(Written<String> name, Optional<Coin.DieState> state) { }

    private static TextOr<DieInState> die() {
        Keys keys = new Keys("a die");
        Key<Written<String>> name = keys.must("die", Texts.WORDS, "Name of the die.", "R3");
        Key<Written<Integer>> state = keys.must("state", Texts.WHOLE_NUMBER,
                "In which state it struck the coin: 1 for the earliest that is known, 2 for the next.", "2");
        Key<Optional<Written<String>>> flaw = keys.may("flaw", Texts.WORDS, "By what the state is known.",
                "a crack from the border to the wing");
        return new TextOr<>(Texts.WORDS, words -> new DieInState(words, Optional.empty()),
                keys.block(f -> new DieInState(f.get(name), Optional.of(new Coin.DieState(f.get(state), f.get(flaw))))));
    }

    private static Block<Coin.Holding> holding() {
        Keys keys = new Keys("where a coin is held");
        Key<Written<String>> id = keys.must("id", Texts.ID, "The collection, from collections.yaml.", "town-museum");
        Key<Optional<Written<String>>> number = keys.may("number", Texts.WORDS, "The collection's own number.", "1931.42");
        return keys.block(f -> new Coin.Holding(f.get(id), f.get(number)));
    }

    private static Block<Coin.Find> find() {
        Keys keys = new Keys("a find");
        Key<Written<String>> spot = keys.must("spot", Texts.ID, "The find-spot, from find-spots.yaml.", "harbour");
        Key<Optional<Written<String>>> context = keys.may("context", Texts.WORDS, "Layer or trench, as printed.", "Trench C, layer 4");
        Key<Optional<Written<String>>> number = keys.may("number", Texts.WORDS, "The excavation's own number.", "C 118");
        return keys.block(f -> new Coin.Find(f.get(spot), f.get(context), f.get(number)));
    }

    private static Block<Coin.Photograph> photograph() {
        Keys keys = new Keys("photographs");
        Key<Optional<Written<String>>> obverse = keys.may("obverse", PathTexts.PHOTOGRAPH,
                "Path of the picture of the obverse, from the folder of the catalogue.", "photographs/lk-0042-obv.jpg");
        Key<Optional<Written<String>>> reverse = keys.may("reverse", PathTexts.PHOTOGRAPH,
                "Path of the picture of the reverse.", "photographs/lk-0042-rev.jpg");
        Key<Optional<Scalar>> width = keys.may("width", Texts.READING,
                "How wide the whole picture is at life size, margins and all; without it the picture is printed as wide as "
                        + "the coin's diameter.", "24.3 mm");
        Key<Optional<Written<String>>> credit = PictureRightsKeys.credit(keys);
        Key<Optional<Written<String>>> permission = PictureRightsKeys.permission(keys);
        Key<Optional<PrintScale>> scale = keys.may("scale", PictureStyleKeys.SCALE,
                "How large this coin is printed, whatever the house style has for others.", "2:1");
        return keys.block(f -> new Coin.Photograph(f.get(obverse), f.get(reverse),
                f.get(width).flatMap(text -> Readings.read(Kind.DIAMETER, text, Convention.UNDECLARED, f.site().at(width.name()))),
                f.get(credit), f.get(permission), f.get(scale)));
    }
}
