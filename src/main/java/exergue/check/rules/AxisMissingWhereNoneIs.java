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
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;

/** The axis of a uniface or punched coin is said to be missing. Common practice, no source. */
public final class AxisMissingWhereNoneIs implements Rule {

    static final Code CODE = new Code("axis-missing-where-none-is", Severity.NOTE,
            "An axis is called missing where there can be none",
            "Missing means that it could have been measured; not applicable means that there is nothing to "
                    + "measure. The book and its methods statement count the two apart. Common practice, no source.",
            """
                    # the type says “uniface: yes”
                    axis: "missing: not recorded"
                    """,
            """
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
            if (!each.type().hasAxis()) {
                Hand.of(each.coin()).forEach(hand -> hand.measurement().reading(Kind.AXIS)
                        .filter(axis -> axis.value() instanceof Reading.Missing)
                        .ifPresent(axis -> faults.add(fault(each.type(), hand, axis))));
            }
        }
        return faults;
    }

    private static Finding fault(Type type, Hand hand, Written<Reading> axis) {
        String making = type.uniface().value() ? "uniface" : "punched";
        return Finding.of(CODE, axis.place(), hand.path() + ".axis",
                "The axis is “" + axis.value().recorded() + "”, but the type “" + type.id() + "” is " + making
                        + ": there is no axis that could be missing.",
                "Write: axis: \"not applicable: " + making + "\".");
    }
}
