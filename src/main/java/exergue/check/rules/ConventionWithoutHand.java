package exergue.check.rules;

import exergue.check.ConventionUse;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.measure.Convention;
import exergue.model.Catalogue;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;

/** A convention names neither a person nor a work. */
public final class ConventionWithoutHand implements Rule {

    static final Code CODE = new Code("convention-without-hand", Severity.NOTE,
            "A convention does not say who measured",
            "Two hands measure differently. The methods statement names whose figures the book prints: a "
                    + "person, a team, or a published work.",
            """
                    bench-2024:
                      title: measurements at the bench
                    """,
            """
                    bench-2024:
                      title: measurements at the bench
                      by: the excavation staff
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
            if (convention.work().isEmpty() && convention.by().isEmpty() && use.of(convention.id()) > 0) {
                faults.add(Finding.of(CODE, written.place(), convention.id() + ".by",
                        "The convention “" + convention.id() + "” says neither who measured nor from which work its figures "
                                + "come.",
                        "Add “by” with the name of whoever measured, or “work” with the id of a work in works.yaml."));
            }
        }
        return faults;
    }
}
