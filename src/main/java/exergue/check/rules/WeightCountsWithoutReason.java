package exergue.check.rules;

import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import java.util.ArrayList;
import java.util.List;

/** The override of the rule for damage has an empty reason. */
public final class WeightCountsWithoutReason implements Rule {

    static final Code CODE = new Code("weight-counts-without-reason", Severity.WARNING,
            "A rule is set aside and no reason is given",
            "Whether a weight counts changes means and standards. Whoever sets the rule aside tells the "
                    + "reader why.",
            """
                    damage: [chipped]
                    weight-counts: {counts: yes, why: ""}
                    """,
            """
                    damage: [chipped]
                    weight-counts: {counts: yes, why: "chip under 0.01 g"}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (Coin coin : catalogue.coins()) {
            coin.weightCounts().filter(word -> word.why().value().isBlank())
                    .ifPresent(word -> faults.add(Finding.of(CODE, word.why().place(), "weight-counts.why",
                            "“weight-counts” of the coin “" + coin.id() + "” gives no reason.",
                            "Say in “why” what makes this weight an exception.")));
        }
        return faults;
    }
}
