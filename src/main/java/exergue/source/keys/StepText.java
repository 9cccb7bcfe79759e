package exergue.source.keys;

import exergue.measure.Dimension;
import exergue.measure.Kind;
import exergue.measure.ReadingFault;
import exergue.measure.Unit;
import exergue.measure.Units;
import exergue.model.Written;
import exergue.source.shape.ShapeCodes;
import exergue.source.shape.Site;
import exergue.source.shape.Text;
import exergue.source.yaml.Scalar;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The smallest step of a balance or a rule: one figure with its unit. Not a reading: no coin weighs 0.01 g. It is written with the
 * decimal mark of its convention, which may stand further down in the file.
 */
final class StepText {

    private static final Pattern SHAPE = Pattern.compile("([0-9]{1,6}(?:[.,][0-9]{1,6})?) ?(\\D.{0,40})");

    private StepText() { }

    /** A step whose decimal mark is still to be looked at. */
    @FunctionalInterface
    interface Step {
        /** In grams, millimetres or clock hours; empty where it is no step, which is reported then. */
        Optional<BigDecimal> read(boolean decimalComma);
    }

    static Text<Step> of(Kind kind) {
        return new Text<>("figure with its unit", List.of(), "", false,
                (scalar, site) -> Optional.of(comma -> step(kind.dimension(), scalar, site, comma)),
                (site, place) -> comma -> Optional.of(BigDecimal.ONE));
    }

    /** A figure of no convention, with a decimal point or comma, in grams, millimetres or clock hours. */
    static Text<Written<BigDecimal>> either(Kind kind) {
        return new Text<>("figure with its unit", List.of(), "", false,
                (scalar, site) -> step(kind.dimension(), scalar, site, scalar.text().indexOf(',') >= 0)
                        .map(value -> new Written<>(value, scalar.place())),
                (site, place) -> new Written<>(BigDecimal.ONE, place));
    }

    private static Optional<BigDecimal> step(Dimension dimension, Scalar scalar, Site site, boolean comma) {
        char other = comma ? '.' : ',';
        if (SHAPE.matcher(scalar.text().strip()).matches() && scalar.text().indexOf(other) >= 0) {
            String word = comma ? "comma" : "point";
            String mended = scalar.text().strip().replace(other, comma ? ',' : '.');
            site.report(Readings.code(ReadingFault.OTHER_DECIMAL_MARK), scalar.place(), "“" + scalar.text() + "” has a decimal "
                    + (comma ? "point" : "comma") + ", but figures of this convention are written with a decimal " + word + ".",
                    "Write " + mended + (comma ? "." : ", or say decimal-mark: comma in the convention if all its figures are written so."));
            return Optional.empty();
        }
        Matcher matcher = SHAPE.matcher(scalar.text().strip());
        Optional<Unit> unit = matcher.matches()
                ? Units.named(matcher.group(2)).filter(u -> u.dimension() == dimension) : Optional.empty();
        Optional<BigDecimal> step = unit.map(u -> u.factor().times(new BigDecimal(matcher.group(1).replace(',', '.'))))
                .filter(value -> value.signum() > 0);
        if (step.isEmpty()) {
            site.report(ShapeCodes.NO_STEP, scalar.place(), "“" + scalar.text() + "” is not one figure with its unit.",
                    "Write the smallest step that can be read, such as 0.01 g, 0.1 mm or 1 h.");
        }
        return step;
    }
}
