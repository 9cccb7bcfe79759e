package exergue.source.keys;

import exergue.model.Coin;
import exergue.model.Damage;
import exergue.model.EraDate;
import exergue.model.Excuse;
import exergue.model.Measurement;
import exergue.model.Prose;
import exergue.model.Provenance;
import exergue.model.Reference;
import exergue.model.Side;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Fields;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.ListOf;
import exergue.source.shape.Texts;
import java.util.List;
import java.util.Optional;

/** coins/&lt;id&gt;.yaml: one coin. */
final class CoinKeys {

    private static final Keys KEYS = new Keys("a coin");

    private static final Key<Written<String>> ID = KEYS.must("id", Texts.OWN_ID,
            "The coin's own id, the same as the name of its file. It never changes.", "lk-0042");
    private static final Key<Written<String>> TYPE = KEYS.must("type", Texts.ID,
            "The type the coin is of: the name of a file in types/.", "owl-drachm");
    private static final Key<Optional<Written<Integer>>> NUMBER = KEYS.may("number", Texts.WHOLE_NUMBER,
            "A catalogue number that must not change; without it the order of the book gives one.", "42");
    private static final Key<Optional<Measurement>> MEASURED = KEYS.may("measured", MeasurementKeys.BLOCK,
            "The main measurement, the one that is printed unless the house prefers another.", "");
    private static final Key<List<Measurement>> ALSO_MEASURED = KEYS.or("also-measured", new ListOf<>(MeasurementKeys.BLOCK), "",
            "Other people's figures for the same coin, each under its own convention.", "");
    private static final Key<List<Written<Damage>>> DAMAGE = KEYS.or("damage",
            new ListOf<>(Texts.oneOf(List.of(Damage.values()), Damage::word, "")), "",
            "What has changed the coin's weight since it left the mint.", "[chipped, corroded]");
    private static final Key<Optional<Coin.WeightCounts>> WEIGHT_COUNTS = KEYS.may("weight-counts", CoinParts.WEIGHT_COUNTS,
            "Your word on whether the weight counts in statistics, against the rule for damage.", "");
    private static final Key<Optional<Coin.Dies>> DIES = KEYS.may("dies", CoinParts.DIES, "The dies the coin was struck from.", "");
    private static final Key<Optional<EraDate>> ERA_DATE = KEYS.may("era-date", Dates.ERA_DATE,
            "The year of an era that stands on this coin, where its type has not one year.", "");
    private static final Key<Optional<Side>> OBVERSE = KEYS.may("obverse", SideKeys.BLOCK,
            "Only what differs from the obverse of the type.", "");
    private static final Key<Optional<Side>> REVERSE = KEYS.may("reverse", SideKeys.BLOCK,
            "Only what differs from the reverse of the type.", "");
    private static final Key<Optional<Coin.Holding>> COLLECTION = KEYS.may("collection", CoinParts.HOLDING,
            "The collection that holds the coin.", "");
    private static final Key<Optional<Coin.Find>> FIND = KEYS.may("find", CoinParts.FIND, "Where the coin was found.", "");
    private static final Key<List<Provenance>> PROVENANCE = KEYS.or("provenance", new ListOf<>(CoinParts.PROVENANCE), "",
            "Earlier owners and sales, oldest first. Those with a date are printed in order of date.",
            "[From an old collection, {date: 1931, words: \"bought in 1931\"}]");
    private static final Key<Optional<Written<String>>> COUNTERMARK = KEYS.may("countermark", Texts.WORDS,
            "What was punched into the coin after it was struck; also its entry in the index.", "heron in circle");
    private static final Key<List<Reference>> REFERENCES = KEYS.or("references", new ListOf<>(ReferenceKeys.BLOCK), "",
            "Where this coin is published.", "");
    private static final Key<Optional<Coin.Photograph>> PHOTOGRAPH = KEYS.may("photograph", CoinParts.PHOTOGRAPH,
            "Photographs of the coin.", "");
    private static final Key<Optional<Written<String>>> DIAMETER_MEANS = KEYS.may("diameter-means", Texts.WORDS,
            "What was measured on a flan that is not round.", "across the flats");
    private static final Key<List<Prose>> NOTE = KEYS.or("note", Texts.PROSE, "",
            "Anything else worth printing, in Markdown.", "Struck over an older drachm.");
    private static final Key<List<Excuse>> EXCUSED = ExcuseKeys.in(KEYS);

    static final Block<Coin> BLOCK = KEYS.block(CoinKeys::bind);

    private CoinKeys() { }

    private static Coin bind(Fields f) {
        return new Coin(f.get(ID), f.get(TYPE), f.get(NUMBER), f.get(MEASURED), f.get(ALSO_MEASURED), f.get(DAMAGE),
                f.get(WEIGHT_COUNTS), f.get(DIES), f.get(ERA_DATE), f.get(OBVERSE).orElse(Side.BLANK), f.get(REVERSE).orElse(Side.BLANK),
                f.get(COLLECTION), f.get(FIND), f.get(PROVENANCE), f.get(COUNTERMARK), f.get(REFERENCES), f.get(PHOTOGRAPH),
                f.get(DIAMETER_MEANS), f.get(NOTE), f.get(EXCUSED), f.place());
    }
}
