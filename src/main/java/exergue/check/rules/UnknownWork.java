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

/** A reference, a convention or a chapter names a work that is not declared. */
public final class UnknownWork implements Rule {

    static final Code CODE = new Code("unknown-work", Severity.ERROR,
            "A work is cited that is not declared",
            "The reader finds the works behind the abbreviations in the list of works cited. A work that is not "
                    + "in works.yaml, works.json or works.bib would be cited and never explained.",
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
        UnknownId unknown = new UnknownId(CODE, "work", home(catalogue), catalogue.works().keySet());
        List<Finding> faults = new ArrayList<>();
        Citations.in(catalogue).forEach(
                citation -> faults.addAll(unknown.unlessDeclared(citation.work(), citation.path())));
        return faults;
    }

    /** The file in which works are declared; works.yaml where there is none yet. */
    private static String home(Catalogue catalogue) {
        List<String> files = catalogue.works().values().stream().map(work -> work.id().place().file()).distinct().toList();
        return files.isEmpty() ? "works.yaml" : String.join(" or ", files);
    }
}
