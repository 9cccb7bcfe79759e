package exergue.check.rules;

import exergue.check.CoinOfType;
import exergue.check.PrintedDiameter;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.measure.Convention;
import exergue.model.Catalogue;
import exergue.model.ReadingChoice;
import exergue.model.Shape;
import java.util.ArrayList;
import java.util.List;

/** The diameter that is printed of an oval flan is a single figure without a declared direction or meaning. Common practice, no source. */
public final class OvalDirectionNotSaid implements Rule {

    static final Code CODE = new Code("oval-direction-not-said", Severity.NOTE,
            "A single diameter of an oval flan, and no word in which direction it was taken",
            "The long and the short way across an oval differ much. One figure is enough only if the reader "
                    + "is told which it is. Common practice, no source.",
            """
                    # the type says “shape: oval”; the convention names no direction
                    diameter: 18 mm
                    """,
            """
                    diameter: 18 x 14 mm
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        ReadingChoice choice = ReadingChoice.of(catalogue.style());
        for (CoinOfType each : CoinOfType.all(catalogue)) {
            boolean said = each.coin().diameterMeans().isPresent() || each.type().diameterMeans().isPresent();
            if (each.type().shape().value() == Shape.OVAL && !said) {
                PrintedDiameter.of(each, choice).filter(PrintedDiameter::isSingle)
                        .filter(one -> one.direction() == Convention.Direction.NOT_SAID).ifPresent(one -> faults.add(
                        Finding.of(CODE, one.place(), one.path(),
                                "One figure, “" + one.recorded() + "”, is printed for an oval flan, and its convention "
                                        + "does not say in which direction it was taken.",
                                "Give the least and greatest, such as “18 x 14 mm”, or add “direction” to the "
                                        + "convention.")));
            }
        }
        return faults;
    }
}
