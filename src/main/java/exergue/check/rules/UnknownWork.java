package exergue.check.rules;

import exergue.check.Citations;
import exergue.check.Rule;
import exergue.check.UnknownId;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.ArrayList;
import java.util.List;

/** A reference or a convention names a work that is not declared. */
public final class UnknownWork implements Rule {

    static final Code CODE = new Code("unknown-work", Severity.ERROR,
            "A work is cited that is not declared",
            "The reader finds the works behind the abbreviations in the list of works cited. A work that is not "
                    + "in works.yaml would be cited and never explained.",
            """
                    references:
                      - {work: halam, number: "14"}
                    """,
            """
                    references:
                      - {work: hallam, number: "14"}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        UnknownId unknown = new UnknownId(CODE, "work", "works.yaml", catalogue.works().keySet());
        List<Finding> faults = new ArrayList<>();
        Citations.in(catalogue).forEach(
                citation -> faults.addAll(unknown.unlessDeclared(citation.work(), citation.path())));
        return faults;
    }
}
