package exergue.source.keys;

import exergue.measure.Kind;
import exergue.measure.PrintForm;
import exergue.model.Language;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Fields;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.ListOf;
import exergue.source.shape.Texts;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/** {@code measurement-line} of the house style. */
record MeasurementLine(List<Kind> order, List<Kind> inRemarks, String separator, PrintForm form, String missing, String notApplicable,
                       String illegible) {

    private static final Keys KEYS = new Keys("the measurement line");

    private static final Key<List<Written<Kind>>> ORDER = KEYS.or("order",
            new ListOf<>(Texts.oneOf(List.of(Kind.values()), Kind::word, "")), "weight, diameter, axis",
            "What is printed, in this order. Thickness, density and surface leave nothing where a coin has none.",
            "[weight, axis, diameter]");
    private static final Key<List<Written<Kind>>> IN_REMARKS = KEYS.or("in-remarks",
            new ListOf<>(Texts.oneOf(List.of(Kind.values()), Kind::word, "")), "",
            "What is printed among the remarks of those coins that have it, rather than in the line.", "[thickness, density]");
    private static final Key<Written<String>> SEPARATOR = KEYS.or("separator", Texts.WORDS_OR_NONE, ", ",
            "What stands between the members in running text; in columns nothing does.", "\"; \"");
    private static final Key<Optional<Written<String>>> DECIMAL_MARK = KEYS.may("decimal-mark",
            Texts.choice(List.of("point", "comma"), word -> word.equals("comma") ? "," : "."),
            "The decimal mark the book prints; unless written, a point in English and a comma in other languages.", "comma");
    private static final Key<Written<String>> UNIT_SPACE = KEYS.or("unit-space",
            Texts.choice(List.of("narrow", "normal", "none"), MeasurementLine::space), "narrow",
            "The space between figure and unit. It never breaks.", "normal");
    private static final Key<Written<Integer>> WEIGHT_DECIMALS = KEYS.or("weight-decimals", Texts.DECIMALS, "2",
            "Most decimals of a weight. Fewer in the source are never filled up.", "1");
    private static final Key<Written<Integer>> DIAMETER_DECIMALS = KEYS.or("diameter-decimals", Texts.DECIMALS, "0",
            "Most decimals of a diameter.", "1");
    private static final Key<Written<RoundingMode>> ROUNDING = KEYS.or("rounding", Texts.choice(List.of("half-even", "half-up"),
            word -> word.equals("half-up") ? RoundingMode.HALF_UP : RoundingMode.HALF_EVEN), "half-even",
            "Where a figure half-way between two goes: to the even one, or up.", "half-up");
    private static final Key<Written<String>> HOUR_SIGN = KEYS.or("hour-sign", Texts.WORDS_OR_NONE, "h",
            "What stands for hours.", "\"\"");
    private static final Key<Optional<Written<String>>> CIRCA = KEYS.may("circa", Texts.WORDS,
            "Before a figure that is about right; unless written, c. in English, env. in French, ca. in German and Italian.", "ca.");
    private static final Key<Written<String>> MISSING = KEYS.or("missing", Texts.WORDS_OR_NONE, "–",
            "Printed where a figure is missing.", "n/a");
    private static final Key<Written<String>> NOT_APPLICABLE = KEYS.or("not-applicable", Texts.WORDS_OR_NONE, "",
            "Printed where there can be none.", "\"\"");
    private static final Key<Written<String>> ILLEGIBLE = KEYS.or("illegible", Texts.WORDS_OR_NONE, "[–]",
            "Printed where a figure was written and cannot be read.", "\"[?]\"");

    static final Block<MeasurementLine> BLOCK = KEYS.block(MeasurementLine::bind);

    private static MeasurementLine bind(Fields f) {
        Language language = f.site().desk().language();
        PrintForm form = new PrintForm(f.get(WEIGHT_DECIMALS).value(), f.get(DIAMETER_DECIMALS).value(), f.get(ROUNDING).value(),
                f.get(DECIMAL_MARK).map(Written::value).orElse(language.decimalMark()), f.get(UNIT_SPACE).value(),
                f.get(HOUR_SIGN).value(), f.get(CIRCA).map(Written::value).orElse(language.circa()));
        return new MeasurementLine(kinds(f.get(ORDER)), kinds(f.get(IN_REMARKS)), f.get(SEPARATOR).value(), form,
                f.get(MISSING).value(), f.get(NOT_APPLICABLE).value(), f.get(ILLEGIBLE).value());
    }

    private static List<Kind> kinds(List<Written<Kind>> written) {
        return written.stream().map(Written::value).toList();
    }

    private static String space(String word) {
        return switch (word) {
            case "narrow" -> "\u202F";
            case "normal" -> "\u00A0";
            default -> "";
        };
    }
}
