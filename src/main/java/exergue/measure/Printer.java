package exergue.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Readings to printed figures, rounded once, to what both the house and the source support.
 *
 * <p>The place a source supports is that of the first digit of its step in the printed unit (NIST SP 811, B.7;
 * ISO 80000-1, Annex B): 0.1 grain is 0.0065 g, so 61.5 grains is good to 0.001 g. No nought is ever added that the
 * source does not support. A figure below one at the last place, such as 0.4 mm in whole millimetres, keeps its first
 * digit rather than vanish or double. None is rounded to tens or hundreds, since nobody can see which noughts of
 * "30 mm" count: one inch prints as 25 mm, and its interval is shown by {@link Working}.
 *
 * <p>A die-axis prints as the nearest whole hour; one exactly midway between two hours prints as a half: 6½.
 */
public final class Printer {

    private static final String NO_BREAK = "\u00A0";

    private Printer() { }

    /**
     * @param figure "3.87", "18 × 17", "17–19", "c. 3.9", the spaces in it never breaking; no unit
     * @param unit   "g", "mm", "h"
     */
    public record Printed(String figure, String unit, PrintForm form) {

        /** Figure and unit with the house's space between them. */
        public String text() {
            return figure + form.unitSpace() + unit;
        }
    }

    public static Printed print(Reading.Read reading, PrintForm form) {
        String between = reading.form() == Reading.Form.TWO_WAY ? NO_BREAK + "×" + NO_BREAK : "–";
        Stream<String> figures = sameStep(reading).stream().map(quantity -> figure(reading.kind(), quantity, form));
        if (reading.form() == Reading.Form.RANGE) {
            figures = figures.distinct();
        }
        return new Printed(qualified(figures.collect(Collectors.joining(between)), reading.qualifier(), form),
                unit(reading.kind(), form), form);
    }

    /** The ends of a range share the coarser of their steps, since 18.1 to 18.3 in rougher units would else print as 18.1–18. */
    private static List<Quantity> sameStep(Reading.Read reading) {
        if (reading.form() != Reading.Form.RANGE) {
            return reading.normal();
        }
        BigDecimal step = reading.normal().get(0).resolution().max(reading.normal().get(1).resolution());
        return reading.normal().stream().map(end -> new Quantity(end.value(), end.unit(), step)).toList();
    }

    /** One figure without unit or qualifier. */
    static String figure(Kind kind, Quantity normal, PrintForm form) {
        if (kind == Kind.AXIS) {
            return hours(Axis.printed(normal.value()));
        }
        BigDecimal step = normal.resolution();
        int supported = Math.max(0, step.scale() - step.precision() + 1);
        int decimals = Math.min(form.decimals(kind), supported);
        boolean below = normal.value().compareTo(BigDecimal.ONE.movePointLeft(decimals)) < 0;
        BigDecimal rounded = below ? normal.value().round(new MathContext(1, form.rounding()))
                : normal.value().setScale(decimals, form.rounding());
        return rounded.toPlainString().replace(".", form.decimalMark());
    }

    private static String hours(BigDecimal printed) {
        if (!Axis.midway(printed)) {
            return printed.stripTrailingZeros().toPlainString();
        }
        String whole = printed.toBigInteger().toString();
        return (whole.equals("0") ? "12" : whole) + "½";
    }

    private static String qualified(String figure, Reading.Qualifier qualifier, PrintForm form) {
        return switch (qualifier) {
            case NONE -> figure;
            case ABOUT -> form.circa() + NO_BREAK + figure;
            case LESS_THAN -> "<" + NO_BREAK + figure;
            case MORE_THAN -> ">" + NO_BREAK + figure;
            case UNCERTAIN -> figure + "?";
        };
    }

    private static String unit(Kind kind, PrintForm form) {
        return kind == Kind.AXIS ? form.hourSign() : Units.normal(kind.dimension()).symbol();
    }
}
