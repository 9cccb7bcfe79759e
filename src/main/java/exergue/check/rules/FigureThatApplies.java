package exergue.check.rules;

import exergue.check.Hand;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Coin;
import java.util.ArrayList;
import java.util.List;

/** A weight or diameter is said not to apply. */
public final class FigureThatApplies implements Rule {

    static final Code CODE = new Code("figure-that-applies", Severity.WARNING,
            "A weight or diameter is called not applicable",
            "Every coin has a weight and a diameter. Not applicable means that there is nothing to measure; "
                    + "where nobody measured, the figure is missing, and the entry should say why.",
            """
                    weight: "not applicable: known from a cast"
                    """,
            """
                    weight: "missing: known from a cast"
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (Coin coin : catalogue.coins()) {
            for (Hand hand : Hand.of(coin)) {
                for (Kind kind : List.of(Kind.WEIGHT, Kind.DIAMETER)) {
                    hand.measurement().reading(kind).ifPresent(written -> {
                        if (written.value() instanceof Reading.NotApplicable none) {
                            faults.add(Finding.of(CODE, written.place(), hand.path() + "." + kind.word(),
                                    "The " + kind.word() + " of a coin is “" + none.recorded()
                                            + "”, but every coin has one.",
                                    "Write \"missing: " + none.why() + "\" instead."));
                        }
                    });
                }
            }
        }
        return faults;
    }
}
