package exergue.source.keys;

import exergue.measure.Kind;
import exergue.model.CoinField;
import exergue.model.CoinGroup;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.ListOf;
import exergue.source.shape.Texts;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What stands under an id in {@code groups} of catalogue.yaml: which coins are studied together. */
final class GroupKeys {

    static final Block<CoinGroup> BLOCK = group();

    private GroupKeys() { }

    private static Block<CoinGroup> group() {
        Keys keys = new Keys("a group");
        Key<Optional<Written<String>>> name = keys.may("name", Texts.WORDS, "What tables and charts call the group.", "Drachms of the harbour");
        Key<Optional<Map<CoinField, List<Written<String>>>>> coins = keys.may("coins", conditions(),
                "Which coins belong to it: those that fit every line written here. Without it, every coin of the catalogue.", "");
        Key<List<Written<CoinField>>> by = keys.or("by", new ListOf<>(Texts.oneOf(List.of(CoinField.values()), CoinField::word)), "",
                "By what they are then divided, to be shown side by side.", "[mint, denomination]");
        Key<Optional<Written<BigDecimal>>> steps = keys.may("steps", StepText.either(Kind.WEIGHT),
                "Steps of its frequency table and histogram.", "0.05 g");
        Key<Optional<CoinGroup.WeightStandard>> standard = keys.may("standard", standard(),
                "The weight the coins were meant to have; it is drawn, and the distance of the peak from it is given.", "");
        Key<Optional<CoinGroup.Wear>> wear = keys.may("wear", wear(),
                "What the coins have lost in use. Nothing is corrected unless you give the rate.", "");
        return keys.block(f -> new CoinGroup(f.site().entry(), f.get(name), f.get(coins).orElse(Map.of()), f.get(by), f.get(steps),
                f.get(standard), f.get(wear)));
    }

    private static Block<Map<CoinField, List<Written<String>>>> conditions() {
        Keys keys = new Keys("the coins of a group");
        Map<CoinField, Key<List<Written<String>>>> fields = new EnumMap<>(CoinField.class);
        for (CoinField field : CoinField.values()) {
            fields.put(field, keys.or(field.word(), new ListOf<>(Texts.WORDS), "", about(field), "[" + example(field) + "]"));
        }
        return keys.block(f -> {
            Map<CoinField, List<Written<String>>> wanted = new EnumMap<>(CoinField.class);
            fields.forEach((field, key) -> {
                if (!f.get(key).isEmpty()) {
                    wanted.put(field, f.get(key));
                }
            });
            return wanted;
        });
    }

    private static Block<CoinGroup.WeightStandard> standard() {
        Keys keys = new Keys("a weight standard");
        Key<Optional<Written<String>>> name = keys.may("name", Texts.WORDS, "What it is called, as printed.", "harbour drachm");
        Key<Written<BigDecimal>> weight = keys.must("weight", StepText.either(Kind.WEIGHT),
                "Of one coin; or of the larger weight (pound, mark) from which so many were struck.", "327.45 g");
        Key<Written<Integer>> pieces = keys.or("pieces", Texts.WHOLE_NUMBER, "1", "How many were struck from that weight.", "84");
        return keys.block(f -> new CoinGroup.WeightStandard(f.get(name), f.get(weight), atLeastOne(f.get(pieces))));
    }

    private static Written<Integer> atLeastOne(Written<Integer> pieces) {
        return new Written<>(Math.max(1, pieces.value()), pieces.place());
    }

    private static Block<CoinGroup.Wear> wear() {
        Keys keys = new Keys("the wear of a group");
        Key<Written<BigDecimal>> rate = keys.must("rate", StepText.either(Kind.WEIGHT), "What one coin loses in a year.", "0.4 mg");
        Key<Written<Integer>> years = keys.must("years", Texts.WHOLE_NUMBER, "For how many years the coins were in use.", "30");
        Key<Optional<Written<String>>> why = keys.may("why", Texts.WORDS, "Where the rate comes from.", "the dated hoards");
        return keys.block(f -> new CoinGroup.Wear(f.get(rate), f.get(years), f.get(why)));
    }

    private static String about(CoinField field) {
        return switch (field) {
            case TYPE -> "Ids of types.";
            case MINT -> "Ids of mints.";
            case RULER -> "Ids of rulers.";
            case ISSUE -> "Issues, as the types have them.";
            case DENOMINATION -> "Denominations, as the types have them.";
            case METAL -> "Metals, by their ids.";
            case STANDARD -> "Weight standards, as the types have them.";
            case MADE -> "How they were made.";
            case SHAPE -> "Shapes.";
            case FIND_SPOT -> "Ids of find-spots.";
            case CONTEXT -> "Contexts of finds, as the coins have them.";
            case COLLECTION -> "Ids of collections.";
            case HAND -> "Ids of the conventions under which the coins were measured.";
            case OBVERSE_DIE -> "Obverse dies.";
            case REVERSE_DIE -> "Reverse dies.";
            case COUNTERMARK -> "Countermarks, as the coins have them.";
        };
    }

    private static String example(CoinField field) {
        return switch (field) {
            case TYPE -> "owl-drachm";
            case MINT -> "lampron";
            case RULER -> "archon-1";
            case ISSUE -> "First issue";
            case DENOMINATION -> "Drachm";
            case METAL -> "silver";
            case STANDARD -> "harbour drachm";
            case MADE -> "struck";
            case SHAPE -> "round";
            case FIND_SPOT -> "harbour";
            case CONTEXT -> "layer 4";
            case COLLECTION -> "town-museum";
            case HAND -> "bench-2024";
            case OBVERSE_DIE -> "O1";
            case REVERSE_DIE -> "R1";
            case COUNTERMARK -> "heron in circle";
        };
    }
}
