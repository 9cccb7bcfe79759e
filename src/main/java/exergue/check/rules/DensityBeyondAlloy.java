package exergue.check.rules;

import exergue.check.CoinOfType;
import exergue.check.Hand;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.measure.Alloy;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;

/** A density that no alloy of the two metals named by the type can have. */
public final class DensityBeyondAlloy implements Rule {

    static final Code CODE = new Code("density-beyond-alloy", Severity.WARNING,
            "A density lies outside the alloy that the type names",
            "The density of an alloy of two metals lies between theirs. One outside comes from a slip in a weighing, from "
                    + "air clinging to the coin, or from a third metal or a plated core; no fineness is worked out from it.",
            """
                    # the type says “alloy: gold-silver”
                    density: 9.1 g/cm³
                    """,
            """
                    density: 13.8 g/cm³
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (CoinOfType each : CoinOfType.all(catalogue)) {
            each.type().alloy().ifPresent(alloy -> Hand.of(each.coin()).forEach(hand ->
                    hand.measurement().reading(Kind.DENSITY).ifPresent(written -> {
                        if (written.value() instanceof Reading.Read read && alloy.value().fineness(read.first()).isEmpty()) {
                            faults.add(fault(hand, written, read, alloy.value()));
                        }
                    })));
        }
        return faults;
    }

    private static Finding fault(Hand hand, Written<Reading> written, Reading.Read read, Alloy alloy) {
        return Finding.of(CODE, written.place(), hand.path() + ".density", "The density “" + read.recorded() + "” lies outside the "
                        + "alloys of " + alloy.heavier() + " and " + alloy.lighter() + ", which have "
                        + alloy.lighterDensity().toPlainString() + " to " + alloy.heavierDensity().toPlainString() + " g/cm³.",
                "Look the weighings up. If they are right, the coin has another metal in it: take “alloy” out of the type.");
    }
}
