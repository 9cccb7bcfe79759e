package exergue.check.rules;

import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import java.util.ArrayList;
import java.util.List;

/** The override of the rule for damage overrides nothing. */
public final class WeightCountsWithoutNeed implements Rule {

    static final Code CODE = new Code("weight-counts-without-need", Severity.NOTE,
            "The author’s word on a weight repeats the rule",
            "Weights of undamaged coins count in statistics and those of damaged coins do not. “weight- "
                    + "counts” is for the exceptions, and the methods statement counts them as such.",
            """
                    weight-counts: {counts: yes, why: "sound"}   # and no “damage”
                    """,
            """
                    # leave “weight-counts” out
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (Coin coin : catalogue.coins()) {
            coin.weightCounts().filter(word -> word.counts().value() == coin.damage().isEmpty())
                    .ifPresent(word -> faults.add(Finding.of(CODE, word.counts().place(), "weight-counts.counts",
                            word.counts().value()
                                    ? "“weight-counts” lets the weight count, which it does without: no damage is listed."
                                    : "“weight-counts” keeps the weight out of statistics, which the listed damage "
                                            + "does without it.",
                            word.counts().value()
                                    ? "Leave “weight-counts” out, or list the damage that makes it needed."
                                    : "Leave “weight-counts” out.")));
        }
        return faults;
    }
}
