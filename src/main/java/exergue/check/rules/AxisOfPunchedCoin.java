package exergue.check.rules;

import exergue.check.CoinOfType;
import exergue.check.Hand;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Making;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;

/** The type was made with punches and yet an axis is given. Common practice, no source. */
public final class AxisOfPunchedCoin implements Rule {

    static final Code CODE = new Code("axis-of-punched-coin", Severity.WARNING,
            "An axis is given for a coin made with punches",
            "Several punches were set one after the other, each as it came; no single angle says how they "
                    + "stand to each other. Common practice, no source.",
            """
                    # the type says “made: punched”
                    axis: 6 h
                    """,
            """
                    # leave the axis out, or say
                    axis: "not applicable: punched"
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (CoinOfType each : CoinOfType.all(catalogue)) {
            if (!each.type().uniface().value() && each.type().making().value() == Making.PUNCHED) {
                Hand.of(each.coin()).forEach(hand -> hand.measurement().reading(Kind.AXIS)
                        .filter(axis -> axis.value() instanceof Reading.Read)
                        .ifPresent(axis -> faults.add(fault(each, hand, axis))));
            }
        }
        return faults;
    }

    private static Finding fault(CoinOfType each, Hand hand, Written<Reading> axis) {
        return Finding.of(CODE, axis.place(), hand.path() + ".axis",
                "The axis “" + axis.value().recorded() + "” is given for a coin of the type “" + each.type().id()
                        + "”, which is made with punches: no single axis describes them.",
                "Leave the axis out, or write: axis: \"not applicable: punched\". If the coin was struck from a pair of "
                        + "dies, mend “made” in its type.");
    }
}
