package exergue.study;

import exergue.finding.Code;
import exergue.finding.Severity;
import exergue.study.die.DieCodes;
import java.util.ArrayList;
import java.util.List;

/** Every code this stage raises. */
public final class StudyCodes {

    static final Code WEIGHT_FAR_OFF = new Code("weight-far-off", Severity.WARNING,
            "A weight is far off those of the other coins of its type",
            "Such a weight is more often a slip than a discovery: grains written as grams, digits swapped, the decimal "
                    + "point one place off, a broken or plated coin not said to be so, a coin under the wrong type. A "
                    + "weight counts as far off if its modified z, on the logarithm of the weight, is beyond 3.5 "
                    + "(Iglewicz and Hoaglin 1993); the group is the type, or, with fewer than five weights, all coins "
                    + "of the same mint, denomination, metal and weight standard (or ruler, where no standard is named). Damaged coins stay out of the group and are never "
                    + "reported for being too light; a weight that “weight-counts” takes out of statistics with a reason counts as excused.",
            """
                    weight: 59.7 g
                    """,
            """
                    weight: 59.7 gr
                    """);

    static final Code DIAMETER_FAR_OFF = new Code("diameter-far-off", Severity.WARNING,
            "A diameter is far off those of the other coins of its type",
            "Such a diameter is more often a slip than a discovery: digits swapped, inches written as millimetres, a "
                    + "broken coin not said to be so, a coin under the wrong type. The test is that for weights, on "
                    + "the logarithm of the diameter.",
            """
                    diameter: 81 mm
                    """,
            """
                    diameter: 18 mm
                    """);

    static final Code OUTSIDE_LIMITS = new Code("outside-limits", Severity.WARNING,
            "A figure lies outside the limits its type declares",
            "The type says between which figures its coins are expected. One outside is a slip, belongs to another type, "
                    + "or shows that the limits are too narrow. Where a type declares limits, no other test is made.",
            """
                    # the type says “limits: {weight: {from: 3.6 g, to: 4.4 g}}”
                    weight: 8.37 g
                    """,
            """
                    weight: 3.87 g
                    """);

    private StudyCodes() { }

    public static List<Code> all() {
        List<Code> all = new ArrayList<>(List.of(WEIGHT_FAR_OFF, DIAMETER_FAR_OFF, OUTSIDE_LIMITS));
        all.addAll(DieCodes.all());
        return List.copyOf(all);
    }
}
