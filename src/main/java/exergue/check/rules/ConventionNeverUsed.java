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

/** No coin was measured under a convention. */
public final class ConventionNeverUsed implements Rule {

    static final Code CODE = new Code("convention-never-used", Severity.NOTE,
            "A convention is declared but no coin was measured under it",
            "The methods statement names only conventions that were used. One that was not may be a slip in "
                    + "the entries: figures given under the wrong name.",
            """
                    bench-2023:
                      title: measurements at the bench, 2023   # and no coin says “by: bench-2023”
                    """,
            """
                    # delete it, or, in the entries it belongs to:
                    measured:
                      by: bench-2023
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
            if (use.of(convention.id()) == 0) {
                faults.add(Finding.of(CODE, written.place(), convention.id() + "",
                        "No coin was measured under the convention “" + convention.id() + "”.",
                        "Delete it from conventions.yaml, or name it in the entries whose figures belong to it."));
            }
        }
        return faults;
    }
}
