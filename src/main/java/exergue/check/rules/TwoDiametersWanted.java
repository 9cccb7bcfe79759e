package exergue.check.rules;

import exergue.check.CoinOfType;
import exergue.check.PrintedDiameter;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.ReadingChoice;
import java.util.ArrayList;
import java.util.List;

/** The diameter that is printed of a square or rectangular flan is a single figure. Common practice, no source. */
public final class TwoDiametersWanted implements Rule {

    static final Code CODE = new Code("two-diameters-wanted", Severity.WARNING,
            "One diameter is printed for a square or rectangular flan",
            "One figure does not describe a square or a rectangle: the reader cannot tell a side from a "
                    + "diagonal, nor how long the other side is. Two measurements are given. Common practice, no "
                    + "source.",
            """
                    # the type says “shape: rectangular”
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
            if (each.type().shape().value().wantsTwoDiameters()) {
                PrintedDiameter.of(each, choice).filter(PrintedDiameter::isSingle).ifPresent(one -> faults.add(
                        Finding.of(CODE, one.place(), one.path(),
                                "One figure, “" + one.recorded() + "”, is printed for a flan that is "
                                        + each.type().shape().value().word() + ".",
                                "Give both sides, such as “18 x 14 mm”.")));
            }
        }
        return faults;
    }
}
