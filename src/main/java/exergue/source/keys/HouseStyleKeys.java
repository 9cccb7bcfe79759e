package exergue.source.keys;

import exergue.dating.DateStyle;
import exergue.dating.Era;
import exergue.model.BookWord;
import exergue.model.HouseStyle;
import exergue.model.HouseStyle.CoinOrder;
import exergue.model.HouseStyle.DieNames;
import exergue.model.HouseStyle.OtherHands;
import exergue.model.HouseStyle.Rows;
import exergue.model.IndexStyle;
import exergue.model.Language;
import exergue.model.Metal;
import exergue.model.PictureStyle;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Fields;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.ListOf;
import exergue.source.shape.MapOf;
import exergue.source.shape.Texts;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** house-style.yaml: what the editor has decided. */
final class HouseStyleKeys {

    private static final Keys KEYS = new Keys("the house style");

    private static final Key<MeasurementLine> LINE = KEYS.or("measurement-line", MeasurementLine.BLOCK, "",
            "The form of the measurement line.", "");
    private static final Key<HouseStyle.Signs> SIGNS = KEYS.or("signs", signs(), "", "Marks after a figure.", "");
    private static final Key<List<Written<String>>> PREFER = KEYS.or("prefer", new ListOf<>(Texts.ID), "",
            "Conventions in order of trust; the first that has a reading is printed. Without it, what stands under measured.",
            "[bench-2024, hallam-1931]");
    private static final Key<Optional<Map<String, Metal>>> METALS = KEYS.may("metals", new MapOf<>(metal()),
            "Metals by id, added to those that are known: gold AV, silver AR, billon Bi, copper-alloy AE, copper Cu, lead PB.", "");
    private static final Key<Written<OtherHands>> OTHER_HANDS = KEYS.or("other-hands",
            Texts.oneOf(List.of(OtherHands.values()), OtherHands::word, ""), "kept",
            "Figures of a coin that are not the ones printed: kept in the data only, or printed among its remarks as well.", "printed");
    private static final Key<Written<Rows>> SPECIMENS = KEYS.or("specimens", Texts.oneOf(List.of(Rows.values()), Rows::word, ""), "aligned",
            "Specimens in aligned rows, or in running lines.", "running");
    private static final Key<Written<CoinOrder>> COIN_ORDER = KEYS.or("coin-order",
            Texts.oneOf(List.of(CoinOrder.values()), CoinOrder::words, ""), "by id", "Order of coins within their type.", "by dies");
    private static final Key<Written<DieNames>> DIE_NAMES = KEYS.or("die-names",
            Texts.oneOf(List.of(DieNames.values()), DieNames::words, ""), "one series",
            "Whether the names of dies run through the whole catalogue, or begin anew with each mint or each type, so that O1 of "
                    + "another is another die.", "by mint");
    private static final Key<HouseStyle.Quotes> QUOTATION_MARKS = KEYS.or("quotation-marks", quotes(), "",
            "The quotation marks that straight ones are set as; unless written, those of the language.", "");
    private static final Key<Map<BookWord, String>> WORDS = KEYS.or("words", words(), "",
            "Words of the book that you want otherwise than its language has them.", "");

    private static final Key<DateStyle> DATES = KEYS.or("dates", DateStyleKeys.DATES, "", "How dates are printed.", "");
    private static final Key<Optional<Map<String, Era>>> ERAS = KEYS.may("eras", new MapOf<>(DateStyleKeys.ERA),
            "Eras whose years stand on coins, by id; ah, the years of the Hijra, is known.", "");

    private static final Key<IndexStyle> INDEXES = KEYS.or("indexes", IndexStyleKeys.BLOCK, "", "What indexes and cross-references say.", "");
    private static final Key<PictureStyle> PICTURES = KEYS.or("pictures", PictureStyleKeys.BLOCK, "", "How photographs of coins are printed.", "");
    private static final HouseRulesKeys RULES = new HouseRulesKeys(KEYS);

    static final Block<HouseStyle> BLOCK = KEYS.block(HouseStyleKeys::bind);

    private HouseStyleKeys() { }

    private static HouseStyle bind(Fields f) {
        MeasurementLine line = f.get(LINE);
        return new HouseStyle(line.order(), line.inRemarks(), line.separator(), line.form(), line.missing(), line.notApplicable(), line.illegible(),
                f.get(SIGNS), f.get(PREFER), metals(f.get(METALS)), f.get(OTHER_HANDS).value(), f.get(SPECIMENS).value(), f.get(COIN_ORDER).value(),
                f.get(QUOTATION_MARKS), f.get(WORDS), f.get(DATES), DateStyleKeys.eras(f.get(ERAS)), f.get(INDEXES),
                f.get(DIE_NAMES).value(), f.get(PICTURES),
                RULES.from(f));
    }

    private static Map<String, Metal> metals(Optional<Map<String, Metal>> added) {
        Map<String, Metal> metals = new LinkedHashMap<>();
        for (Metal known : List.of(new Metal("gold", "AV", "gold"), new Metal("silver", "AR", "silver"),
                new Metal("billon", "Bi", "billon"), new Metal("copper-alloy", "AE", "copper alloy"),
                new Metal("copper", "Cu", "copper"), new Metal("lead", "PB", "lead"))) {
            metals.put(known.id(), known);
        }
        added.ifPresent(metals::putAll);
        return metals;
    }

    private static Block<HouseStyle.Signs> signs() {
        Keys keys = new Keys("the marks after a figure");
        Key<Written<String>> otherHand = keys.or("other-hand", Texts.WORDS_OR_NONE, "°",
                "After a reading under any but the main convention.", "\"*\"");
        Key<Written<String>> damaged = keys.or("damaged", Texts.WORDS_OR_NONE, "†",
                "After a weight that damage has changed.", "‡");
        return keys.block(f -> new HouseStyle.Signs(f.get(otherHand).value(), f.get(damaged).value()));
    }

    private static Block<Metal> metal() {
        Keys keys = new Keys("a metal");
        Key<Written<String>> sign = keys.must("sign", Texts.WORDS, "The sign or word the book prints.", "EL");
        Key<Written<String>> name = keys.must("name", Texts.WORDS, "The name in full.", "electrum");
        return keys.block(f -> new Metal(f.site().entry().value(), f.get(sign).value(), f.get(name).value()));
    }

    private static Block<HouseStyle.Quotes> quotes() {
        Keys keys = new Keys("the quotation marks");
        Key<Optional<Written<String>>> open = keys.may("open", Texts.WORDS, "Opening mark.", "‘");
        Key<Optional<Written<String>>> close = keys.may("close", Texts.WORDS, "Closing mark.", "’");
        Key<Optional<Written<String>>> innerOpen = keys.may("inner-open", Texts.WORDS, "Opening mark inside another.", "“");
        Key<Optional<Written<String>>> innerClose = keys.may("inner-close", Texts.WORDS, "Closing mark inside another.", "”");
        return keys.block(f -> {
            HouseStyle.Quotes usual = f.site().desk().language().quotes();
            return new HouseStyle.Quotes(f.get(open).map(Written::value).orElse(usual.open()),
                    f.get(close).map(Written::value).orElse(usual.close()),
                    f.get(innerOpen).map(Written::value).orElse(usual.innerOpen()),
                    f.get(innerClose).map(Written::value).orElse(usual.innerClose()));
        });
    }

    /** A colon within a plain value would end it. */
    private static String inYaml(String words) {
        return words.contains(": ") ? "\"" + words + "\"" : words;
    }

    private static Block<Map<BookWord, String>> words() {
        Keys keys = new Keys("the words of the book");
        Map<BookWord, Key<Optional<Written<String>>>> own = new LinkedHashMap<>();
        for (BookWord word : BookWord.values()) {
            own.put(word, keys.may(word.key(), Texts.WORDS, "In place of “" + word.in(Language.ENGLISH) + "”.",
                    inYaml(word.in(Language.ENGLISH))));
        }
        return keys.block(f -> {
            Map<BookWord, String> written = new LinkedHashMap<>();
            own.forEach((word, key) -> f.get(key).ifPresent(text -> written.put(word, text.value())));
            return written;
        });
    }
}
