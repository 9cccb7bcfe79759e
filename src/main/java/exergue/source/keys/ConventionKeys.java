package exergue.source.keys;

import exergue.finding.NearMiss;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.ReadingFault;
import exergue.measure.Unit;
import exergue.measure.Units;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Fields;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.Text;
import exergue.source.shape.Texts;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What stands under an id in conventions.yaml: who measured, with what, how. Its parts wait to hear whether it writes decimals with a comma. */
final class ConventionKeys {

    private static final List<String> SIZE_SCALES =
            List.of("mionnet-1805", "leake-1854", "dickeson-1859", "prime-1861", "head-1887");

    private static final Keys KEYS = new Keys("a convention");

    private static final Key<Written<String>> TITLE = KEYS.must("title", Texts.WORDS,
            "What the methods statement calls it.", "measurements at the bench");
    private static final Key<Optional<Written<String>>> SHORT = KEYS.may("short", Texts.WORDS,
            "What tables call it, where there is no room for the title.", "Bench");
    private static final Key<Optional<Written<String>>> BY = KEYS.may("by", Texts.WORDS, "Who measured.", "the authors");
    private static final Key<Optional<Written<String>>> WHEN = KEYS.may("when", Texts.WORDS, "When, as printed.", "2023–2024");
    private static final Key<Optional<Written<String>>> WORK = KEYS.may("work", Texts.WORK,
            "The published work the figures come from, from works.yaml, works.json or works.bib.", "hallam-1931");
    private static final Key<Optional<Written<String>>> CLEANING = KEYS.may("cleaning", Texts.WORDS,
            "State of the coins when they were measured.", "as found");
    private static final Key<Function<Boolean, Convention.Weighing>> WEIGHT = KEYS.or("weight", weighing(), "", "How and on what coins were weighed.", "");
    private static final Key<Function<Boolean, Convention.Sizing>> DIAMETER = KEYS.or("diameter", sizing(), "", "How diameters were taken.", "");
    private static final Key<Function<Boolean, Convention.Turning>> AXIS = KEYS.or("axis", turning(), "", "How die-axes were taken.", "");
    private static final Key<Written<Boolean>> DECIMAL_MARK = KEYS.or("decimal-mark",
            Texts.choice(List.of("point", "comma"), "comma"::equals), "point",
            "The decimal mark of this source: with comma, 3,87 g is read as 3.87 g.", "point");

    static final Block<Written<Convention>> BLOCK = KEYS.block(ConventionKeys::bind);

    private ConventionKeys() { }

    private static Written<Convention> bind(Fields f) {
        Written<String> id = f.site().entry();
        boolean comma = f.get(DECIMAL_MARK).value();
        return new Written<>(new Convention(id.value(), f.get(TITLE).value(), plain(f.get(BY)), plain(f.get(WHEN)),
                plain(f.get(WORK)), f.get(WEIGHT).apply(comma), f.get(DIAMETER).apply(comma), f.get(AXIS).apply(comma), comma,
                plain(f.get(CLEANING)), plain(f.get(SHORT))), id.place());
    }

    private static <T> Optional<T> plain(Optional<Written<T>> written) {
        return written.map(Written::value);
    }

    private static Block<Function<Boolean, Convention.Weighing>> weighing() {
        Keys keys = new Keys("how coins were weighed");
        Key<Optional<Written<String>>> instrument = keys.may("instrument", Texts.WORDS, "The balance.", "a balance reading to 0.01 g");
        Key<Optional<Written<Unit>>> unit = keys.may("unit", unit(Kind.WEIGHT), "The unit of a figure without one.", "g");
        Key<Optional<Written<Convention.GrMeans>>> gr = keys.may("gr", Texts.choice(List.of("grains", "grammes"),
                word -> word.equals("grains") ? Convention.GrMeans.GRAINS : Convention.GrMeans.GRAMMES),
                "What the letters gr stand for in this source. They are never guessed.", "grains");
        Key<Optional<StepText.Step>> resolution = keys.may("resolution", StepText.of(Kind.WEIGHT), "The smallest step of the balance.", "0.01 g");
        return keys.block(f -> comma -> new Convention.Weighing(plain(f.get(instrument)), plain(f.get(unit)),
                plain(f.get(gr)).orElse(Convention.GrMeans.NOT_SAID), f.get(resolution).flatMap(step -> step.read(comma))));
    }

    private static Block<Function<Boolean, Convention.Sizing>> sizing() {
        Keys keys = new Keys("how diameters were taken");
        Key<Optional<Written<String>>> instrument = keys.may("instrument", Texts.WORDS, "The instrument.", "a vernier caliper");
        Key<Optional<Written<Unit>>> unit = keys.may("unit", unit(Kind.DIAMETER), "The unit of a figure without one.", "mm");
        Key<Optional<Written<Convention.Direction>>> direction = keys.may("direction",
                Texts.oneOf(List.of(Convention.Direction.values()), Convention.Direction::word, "not said"),
                "Along which line a diameter was taken.", "greatest");
        Key<Optional<Written<String>>> scale = keys.may("size-scale", Texts.choice(SIZE_SCALES, word -> word),
                "The printed scale of sizes that this source uses.", "mionnet-1805");
        Key<Optional<StepText.Step>> resolution = keys.may("resolution", StepText.of(Kind.DIAMETER), "The smallest step of the instrument.", "0.1 mm");
        return keys.block(f -> comma -> new Convention.Sizing(plain(f.get(instrument)), plain(f.get(unit)),
                plain(f.get(direction)).orElse(Convention.Direction.NOT_SAID), plain(f.get(scale)),
                f.get(resolution).flatMap(step -> step.read(comma))));
    }

    private static Block<Function<Boolean, Convention.Turning>> turning() {
        Keys keys = new Keys("how die-axes were taken");
        Key<Optional<Written<Convention.AxisNotation>>> notation = keys.may("notation",
                Texts.oneOf(List.of(Convention.AxisNotation.values()), Convention.AxisNotation::word, "not said"),
                "What a figure without a sign means.", "hours");
        Key<Written<Boolean>> turning = keys.or("turning",
                Texts.choice(List.of("clockwise", "anticlockwise"), "anticlockwise"::equals), "clockwise",
                "Which way round the axis is counted.", "anticlockwise");
        Key<Optional<StepText.Step>> resolution = keys.may("resolution", StepText.of(Kind.AXIS), "The smallest step that was noted.", "1 h");
        return keys.block(f -> comma -> new Convention.Turning(plain(f.get(notation)).orElse(Convention.AxisNotation.NOT_SAID),
                f.get(turning).value(), f.get(resolution).flatMap(step -> step.read(comma))));
    }

    private static Text<Written<Unit>> unit(Kind kind) {
        List<String> names = Units.of(kind.dimension()).stream().map(Unit::id).toList();
        return new Text<>("unit", List.of(), "", false, (scalar, site) -> {
            Optional<Unit> known = Units.named(scalar.text()).filter(u -> u.dimension() == kind.dimension());
            if (known.isEmpty()) {
                site.report(Readings.code(ReadingFault.UNKNOWN_UNIT), scalar.place(), "“" + scalar.text() + "” is not a unit of " + kind.word() + ".",
                        NearMiss.question(scalar.text(), names)
                                + "The units are " + String.join(", ", names) + ".");
            }
            return known.map(unit -> new Written<>(unit, scalar.place()));
        }, (site, place) -> {
            throw new IllegalStateException("a unit is never one of the keys that must be there");
        });
    }
}
