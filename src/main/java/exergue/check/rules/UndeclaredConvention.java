package exergue.check.rules;

import exergue.check.Hand;
import exergue.check.Rule;
import exergue.check.UnknownId;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;

/** A measurement, or the order of preference of the house style, names a convention that is not declared. */
public final class UndeclaredConvention implements Rule {

    static final Code CODE = new Code("undeclared-convention", Severity.ERROR,
            "Figures are given under a convention that is not declared",
            "A figure means little until one knows who measured, with what and in which direction. Every "
                    + "measurement belongs to a convention in conventions.yaml, from which the methods statement is "
                    + "written.",
            """
                    measured:
                      by: bench-2042
                      weight: 3.87 g
                    """,
            """
                    measured:
                      by: bench-2024
                      weight: 3.87 g
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        UnknownId unknown = new UnknownId(CODE, "measuring convention", "conventions.yaml",
                catalogue.conventions().keySet());
        List<Finding> faults = new ArrayList<>();
        for (Coin coin : catalogue.coins()) {
            for (Hand hand : Hand.of(coin)) {
                faults.addAll(unknown.unlessDeclared(hand.measurement().by(), hand.path() + ".by"));
            }
        }
        for (Written<String> preferred : catalogue.style().prefer()) {
            faults.addAll(unknown.unlessDeclared(preferred, "prefer"));
        }
        return faults;
    }
}
