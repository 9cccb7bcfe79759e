package exergue.check.rules;

import exergue.check.Citations;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** No reference, no convention and no prose leads to a work. */
public final class WorkNeverCited implements Rule {

    static final Code CODE = new Code("work-never-cited", Severity.WARNING,
            "A work is declared but never cited",
            "The list of works cited would name a work to which nothing in the book leads.",
            """
                    # works.yaml, and no reference says “work: hallam”
                    hallam: {sign: Hallam, title: Coins of the Coast}
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
        Set<String> cited = new HashSet<>();
        Citations.in(catalogue).forEach(citation -> cited.add(citation.work().value()));
        return catalogue.works().values().stream()
                .filter(work -> !cited.contains(work.id().value()))
                .map(work -> Finding.of(CODE, work.id().place(), work.id().value(),
                        "The work “" + work.id() + "” is never cited.",
                        "Cite it in the references it belongs to, or delete it from " + work.id().place().file() + "."))
                .toList();
    }
}
