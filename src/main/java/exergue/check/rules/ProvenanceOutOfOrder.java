package exergue.check.rules;

import exergue.check.Rule;
import exergue.dating.Dating;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Provenance;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The dates of a provenance run against the order in which its steps are written, and some steps have no date: where
 * these belong is then a guess. With a date at every step the order is certain, however they are written.
 */
public final class ProvenanceOutOfOrder implements Rule {

    static final Code CODE = new Code("provenance-out-of-order", Severity.WARNING,
            "The steps of a provenance are not in the order of their dates",
            "A provenance is printed in order of date, and a step without a date after the one it is written after. If the "
                    + "dated steps are not written in their order, a step without a date may come to stand with the wrong owner.",
            """
                    provenance:
                      - {words: sale of 1931, date: 1931}
                      - set in a brooch
                      - {words: A. Orr, date: 1890}
                    """,
            """
                    provenance:
                      - {words: A. Orr, date: 1890}
                      - set in a brooch
                      - {words: sale of 1931, date: 1931}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (Coin coin : catalogue.coins()) {
            if (coin.provenance().stream().anyMatch(step -> step.date().isEmpty())) {
                fault(coin.provenance()).ifPresent(faults::add);
            }
        }
        return faults;
    }

    private static Optional<Finding> fault(List<Provenance> steps) {
        Written<Dating> before = null;
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).date().isEmpty()) {
                continue;
            }
            Written<Dating> date = steps.get(i).date().get();
            if (before != null && date.value().isApartFrom(before.value())
                    && Dating.BY_DATE.compare(date.value(), before.value()) < 0) {
                return Optional.of(Finding.of(CODE, date.place(), "provenance[" + (i + 1) + "].date", "The step “"
                        + steps.get(i).words() + "” (" + date.value().edtf() + ") is written after one of " + before.value().edtf()
                        + ", and other steps have no date to say where they belong.",
                        "Write the steps in the order in which they happened, or give each of them a date.")
                        .withRelated(before.place(), "the later date"));
            }
            before = date;
        }
        return Optional.empty();
    }
}
