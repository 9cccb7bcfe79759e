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

/** Diameters were taken under a convention, not a published work, that names no direction. */
public final class ConventionWithoutDirection implements Rule {

    static final Code CODE = new Code("convention-without-direction", Severity.NOTE,
            "A convention does not say in which direction diameters were taken",
            "The greatest diameter of a flan and its diameter from top to bottom can differ by a millimetre "
                    + "or more. The methods statement can only tell the reader what the convention says. For a "
                    + "published work the tool does not ask: often the work itself does not say.",
            """
                    bench-2024:
                      title: measurements at the bench
                      diameter: {instrument: sliding calliper}
                    """,
            """
                    bench-2024:
                      title: measurements at the bench
                      diameter: {instrument: sliding calliper, direction: greatest}
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
            if (convention.work().isEmpty() && use.of(convention.id(), Kind.DIAMETER) > 0
                    && convention.sizing().direction() == Convention.Direction.NOT_SAID) {
                faults.add(Finding.of(CODE, written.place(), convention.id() + ".diameter.direction",
                        "The convention “" + convention.id() + "” has diameters but does not say in which direction they "
                                + "were taken.",
                        "Add “direction” to its “diameter”: greatest, least and greatest, top to bottom, side to side, "
                                + "mean of several, or from a scaled photograph."));
            }
        }
        return faults;
    }
}
