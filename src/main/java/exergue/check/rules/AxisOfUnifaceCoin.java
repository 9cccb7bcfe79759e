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
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;

/** The type is uniface and yet an axis is given. Common practice, no source. */
public final class AxisOfUnifaceCoin implements Rule {

    static final Code CODE = new Code("axis-of-uniface-coin", Severity.WARNING,
            "An axis is given for a uniface coin",
            "The axis says how the reverse stands to the obverse; a coin with one side has none. Common "
                    + "practice, no source.",
            """
                    # the type says “uniface: yes”
                    axis: 6 h
                    """,
            """
                    # leave the axis out, or say
                    axis: "not applicable: uniface"
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (CoinOfType each : CoinOfType.all(catalogue)) {
            if (each.type().uniface().value()) {
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
                        + "”, which is uniface: one side alone has no axis.",
                "Leave the axis out, or write: axis: \"not applicable: uniface\". If the coin has two sides after all, "
                        + "mend its type.");
    }
}
