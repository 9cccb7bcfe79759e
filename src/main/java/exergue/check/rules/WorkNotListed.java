package exergue.check.rules;

import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.List;

/** The book has a list of abbreviations for the standard works, and no list for this one. */
public final class WorkNotListed implements Rule {

    static final Code CODE = new Code("work-not-listed", Severity.WARNING,
            "A work stands in no list of the book",
            "The part “abbreviations” lists the standard works, the part “works” all others. Where the book has only the "
                    + "first, the sign of any other work is never explained.",
            """
                    # catalogue.yaml, and hallam is not a standard work
                    parts: {front: [abbreviations], body: [catalogue]}
                    """,
            """
                    parts: {front: [abbreviations], body: [catalogue], back: [works]}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        if (!catalogue.plan().has("abbreviations") || catalogue.plan().has("works")) {
            return List.of();
        }
        return catalogue.works().values().stream().filter(work -> !work.standard())
                .map(work -> Finding.of(CODE, work.id().place(), work.id().value(),
                        "The work “" + work.id() + "” is not a standard work, and the book has no part “works” to list it.",
                        "Add “works” to the parts in catalogue.yaml, or write “standard: yes” for this work in works.yaml."))
                .toList();
    }
}
