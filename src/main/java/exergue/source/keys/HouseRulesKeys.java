package exergue.source.keys;

import exergue.model.CoinKind;
import exergue.model.CoinPart;
import exergue.model.ExcusedIn;
import exergue.model.HouseRules;
import exergue.model.HouseRules.Treated;
import exergue.model.HouseRules.Wording;
import exergue.model.Treatment;
import exergue.model.TypePart;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Fields;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.ListOf;
import exergue.source.shape.MapOf;
import exergue.source.shape.Text;
import exergue.source.shape.Texts;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The part of the house style that says what is wanted of the entries. */
final class HouseRulesKeys {

    private final Key<Map<String, Treated>> findings;
    private final Key<List<Wording>> wording;
    private final Key<Required> required;
    private final Key<List<ExcusedIn>> excused;

    /** What must be there, as the file has it. */
    private record Required(Map<CoinKind, List<CoinPart>> ofCoins, List<TypePart> ofTypes) { }

    /** Adds its keys to those of the house style. */
    HouseRulesKeys(Keys keys) {
        findings = keys.or("findings", new MapOf<>(treatment()), "",
                "What becomes of kinds of findings, by code: error, warning, note or off. What is an error by itself stays one. "
                        + "The id is the code of the finding.",
                "{work-never-cited: off, photograph-without-permission: error}");
        wording = keys.or("wording", new ListOf<>(wording()), "", "Words for which the house has one of its own.", "");
        required = keys.or("required", required(), "", "What an entry must have, by the kind of coin.", "");
        excused = ExcuseKeys.inOtherFiles(keys);
    }

    HouseRules from(Fields f) {
        return new HouseRules(List.copyOf(f.get(findings).values()), f.get(wording), f.get(required).ofCoins(), f.get(required).ofTypes(),
                f.get(excused));
    }

    private static Text<Treated> treatment() {
        Text<Written<Treatment>> word = Texts.oneOf(List.of(Treatment.values()), Treatment::word);
        return new Text<>(word.name(), word.words(), "", false,
                (scalar, site) -> word.conversion().convert(scalar, site).map(said -> new Treated(site.entry(), said.value())),
                (site, place) -> new Treated(site.entry(), Treatment.WARNING));
    }

    private static Block<Wording> wording() {
        Keys keys = new Keys("a word of the house");
        Key<Written<String>> write = keys.must("write", Texts.WORDS, "The word of the house.", "flan");
        Key<List<Written<String>>> not = keys.must("not", new ListOf<>(Texts.WORDS), "What is not to be written in its place.", "[planchet]");
        return keys.block(f -> new Wording(f.get(write), f.get(not)));
    }

    private static Block<Required> required() {
        Keys keys = new Keys("what an entry must have");
        Map<CoinKind, Key<List<Written<CoinPart>>>> ofCoins = new EnumMap<>(CoinKind.class);
        for (CoinKind kind : CoinKind.values()) {
            ofCoins.put(kind, keys.or(kind.key(), new ListOf<>(Texts.oneOf(List.of(CoinPart.values()), CoinPart::word)), "",
                    "What is wanted of " + kind.words() + ".", "[weight]"));
        }
        Key<List<Written<TypePart>>> ofTypes = keys.or("types", new ListOf<>(Texts.oneOf(List.of(TypePart.values()), TypePart::word)), "",
                "What is wanted of every type.", "[date]");
        return keys.block(f -> {
            Map<CoinKind, List<CoinPart>> parts = new EnumMap<>(CoinKind.class);
            ofCoins.forEach((kind, key) -> parts.put(kind, f.get(key).stream().map(Written::value).toList()));
            return new Required(parts, f.get(ofTypes).stream().map(Written::value).toList());
        });
    }
}
