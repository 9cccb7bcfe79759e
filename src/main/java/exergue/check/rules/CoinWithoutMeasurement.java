package exergue.check.rules;

import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.List;

/** A coin has neither a main nor any other measurement. */
public final class CoinWithoutMeasurement implements Rule {

    static final Code CODE = new Code("coin-without-measurement", Severity.WARNING,
            "A coin has no measurement at all",
            "Weight, diameter and axis are what a reader looks up first. Where nothing is known the entry "
                    + "should say so and why, so that it is not taken for an oversight.",
            """
                    id: lk-0042
                    type: owl-drachm
                    """,
            """
                    id: lk-0042
                    type: owl-drachm
                    measured:
                      by: bench-2024
                      weight: "missing: lost before it was weighed"
                      diameter: "missing: lost before it was measured"
                      axis: "missing: lost before it was measured"
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        return catalogue.coins().stream()
                // a coin whose file could not be read has no type either, and has been reported
                .filter(coin -> !coin.type().value().isBlank())
                .filter(coin -> coin.measured().isEmpty() && coin.alsoMeasured().isEmpty())
                .map(coin -> Finding.of(CODE, coin.id().place(), "measured",
                        "The coin “" + coin.id() + "” has no measurement.",
                        "Add a block “measured” with “by”, “weight”, “diameter” and “axis”; where a figure is not to "
                                + "be had, write \"missing: \" and the reason in its place."))
                .toList();
    }
}
