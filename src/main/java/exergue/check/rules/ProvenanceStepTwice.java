package exergue.check.rules;

import exergue.check.Doubles;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Provenance;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** One step of a provenance is given twice. */
public final class ProvenanceStepTwice implements Rule {

    static final Code CODE = new Code("provenance-step-twice", Severity.WARNING, "One step of a provenance is given twice",
            "A coin can come back to an owner, but two steps in the same words with the same date are one step entered twice.",
            """
                    provenance:
                      - {words: Harrowgill cabinet, date: 1868}
                      - {words: Harrowgill cabinet, date: 1868}
                    """,
            """
                    provenance:
                      - {words: Harrowgill cabinet, date: 1868}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (Coin coin : catalogue.coins()) {
            if (coin.provenance().size() > 1) {
                Doubles.among(coin.provenance(), ProvenanceStepTwice::markOf).forEach(pair -> faults.add(fault(pair)));
            }
        }
        return faults;
    }

    private static Optional<Doubles.Mark> markOf(Provenance step) {
        String date = step.date().map(when -> when.value().edtf()).orElse("");
        return Optional.of(new Doubles.Mark(step.words().value().strip().toLowerCase(Locale.ROOT) + " " + date, step.words().place()));
    }

    private static Finding fault(Doubles.Pair<Provenance> pair) {
        return Finding.of(CODE, pair.mark().place(), "provenance", "The step “" + pair.thing().words() + "” is given twice.",
                "Delete one of the two, or give each its own date if the coin did come back.")
                .withRelated(pair.first().place(), "the first");
    }
}
