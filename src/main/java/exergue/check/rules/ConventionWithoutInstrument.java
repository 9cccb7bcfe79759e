package exergue.check.rules;

import exergue.check.ConventionUse;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.model.Catalogue;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;

/** Coins were weighed under a convention, not a published work, that names no balance. */
public final class ConventionWithoutInstrument implements Rule {

    static final Code CODE = new Code("convention-without-instrument", Severity.NOTE,
            "A convention does not say with what the coins were weighed",
            "How far a weight can be trusted depends on the balance. The methods statement can only tell the "
                    + "reader what the convention says. For a published work the tool does not ask: often the work "
                    + "itself does not say.",
            """
                    bench-2024:
                      title: measurements at the bench
                      by: the excavation staff
                    """,
            """
                    bench-2024:
                      title: measurements at the bench
                      by: the excavation staff
                      weight: {instrument: electronic balance, resolution: 0.01 g}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        ConventionUse use = ConventionUse.in(catalogue);
        List<Finding> faults = new ArrayList<>();
        for (Written<Convention> written : catalogue.conventions().values()) {
            Convention convention = written.value();
            if (convention.work().isEmpty() && use.of(convention.id(), Kind.WEIGHT) > 0
                    && convention.weighing().instrument().isEmpty()) {
                faults.add(Finding.of(CODE, written.place(), convention.id() + ".weight.instrument",
                        "The convention “" + convention.id() + "” has weights but does not say with what the coins were "
                                + "weighed.",
                        "Add “instrument” to its “weight”, such as: weight: {instrument: electronic balance, "
                                + "resolution: 0.01 g}."));
            }
        }
        return faults;
    }
}
