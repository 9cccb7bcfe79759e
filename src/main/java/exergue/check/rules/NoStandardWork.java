package exergue.check.rules;

import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.BookPlan;
import exergue.model.Catalogue;
import exergue.model.Work;
import java.util.List;
import java.util.stream.Stream;

/** The list of abbreviations would be empty. */
public final class NoStandardWork implements Rule {

    static final Code CODE = new Code("no-standard-work", Severity.WARNING,
            "The list of abbreviations is empty",
            "The part “abbreviations” lists the works that are marked as standard ones. Where none is, it would be a heading "
                    + "and nothing else.",
            """
                    # works.yaml, and the parts have “abbreviations”
                    hallam: {sign: Hallam, title: Coins of the Coast}
                    """,
            """
                    hallam: {sign: Hallam, title: Coins of the Coast, standard: yes}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        if (catalogue.works().values().stream().anyMatch(Work::standard)) {
            return List.of();
        }
        BookPlan plan = catalogue.plan();
        return Stream.of(plan.front(), plan.body(), plan.back()).flatMap(List::stream)
                .filter(part -> part.value().equals("abbreviations"))
                .map(part -> Finding.of(CODE, part.place(), "parts",
                        "The part “abbreviations” would be empty: no work is marked as a standard one.",
                        "Write “standard: yes” in works.yaml for the works it should list, or take the part out."))
                .toList();
    }
}
