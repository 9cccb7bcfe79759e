package exergue.check.rules;

import exergue.check.CoinOfType;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Making;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;

/** The axis of a cast or machine-struck coin is said to be missing, though nobody asks for it. Common practice, no source. */
public final class AxisNotAskedFor implements Rule {

    static final Code CODE = new Code("axis-not-asked-for", Severity.NOTE,
            "The axis of a cast or machine-struck coin is called missing",
            "Moulds and machines set both sides alike from coin to coin, so that the axis is given only where somebody "
                    + "recorded it; the methods statement says where all are alike. To call it missing counts the coin "
                    + "among those that lack a figure. Common practice, no source.",
            """
                    # the type says “made: cast”
                    axis: "missing: not recorded"
                    """,
            """
                    # leave the axis out, or give it
                    axis: 12 h
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (CoinOfType each : CoinOfType.all(catalogue)) {
            Making making = each.type().making().value();
            if (each.type().hasAxis() && (making == Making.CAST || making == Making.MACHINE_STRUCK)) {
                each.coin().measured().flatMap(measurement -> measurement.reading(Kind.AXIS))
                        .filter(axis -> axis.value() instanceof Reading.Missing)
                        .ifPresent(axis -> faults.add(fault(each.type(), axis)));
            }
        }
        return faults;
    }

    private static Finding fault(Type type, Written<Reading> axis) {
        return Finding.of(CODE, axis.place(), "measured.axis",
                "The axis is “" + axis.value().recorded() + "”, but the type “" + type.id() + "” is "
                        + type.making().value().word() + ": its axis is given only where it was recorded.",
                "Leave the axis out.");
    }
}
