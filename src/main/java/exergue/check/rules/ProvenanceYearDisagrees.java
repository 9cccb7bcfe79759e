package exergue.check.rules;

import exergue.check.Rule;
import exergue.check.YearsInWords;
import exergue.dating.Dating;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Provenance;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The words of a step say one year, its date another. */
public final class ProvenanceYearDisagrees implements Rule {

    static final Code CODE = new Code("provenance-year-disagrees", Severity.WARNING,
            "The words of a step of a provenance say another year than its date",
            "The words are printed, the date puts the step in its place. Where they differ one of them is a slip.",
            """
                    provenance:
                      - {words: "sale of 1897, lot 12", date: 1879}
                    """,
            """
                    provenance:
                      - {words: "sale of 1897, lot 12", date: 1897}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (Coin coin : catalogue.coins()) {
            for (int i = 0; i < coin.provenance().size(); i++) {
                fault(coin.provenance().get(i), "provenance[" + (i + 1) + "].date").ifPresent(faults::add);
            }
        }
        return faults;
    }

    private static Optional<Finding> fault(Provenance step, String path) {
        List<Integer> years = YearsInWords.exact(step.words().value());
        if (step.date().isEmpty() || years.isEmpty() || meets(step.date().get().value(), years)) {
            return Optional.empty();
        }
        String said = years.stream().distinct().map(String::valueOf).collect(Collectors.joining(" and "));
        return Optional.of(Finding.of(CODE, step.date().get().place(), path, "The words “" + step.words() + "” say " + said
                + ", and the date “" + step.date().get().value().edtf() + "”.", "Mend the one that is wrong.")
                .withRelated(step.words().place(), "the words"));
    }

    /** Whether the date can lie between the first and the last of the years. */
    private static boolean meets(Dating date, List<Integer> years) {
        return date.earliest().orElse(Integer.MIN_VALUE) <= Collections.max(years)
                && Collections.min(years) <= date.latest().orElse(Integer.MAX_VALUE);
    }
}
