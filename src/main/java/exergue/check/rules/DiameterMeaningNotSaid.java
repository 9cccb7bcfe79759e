package exergue.check.rules;

import exergue.check.CoinOfType;
import exergue.check.PrintedDiameter;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.ReadingChoice;
import exergue.model.Shape;
import exergue.model.Type;
import java.util.ArrayList;
import java.util.List;

/** A polygonal or irregular flan has a diameter and nobody says what was measured. Common practice, no source. */
public final class DiameterMeaningNotSaid implements Rule {

    static final Code CODE = new Code("diameter-meaning-not-said", Severity.WARNING,
            "It is not said what was measured on a polygonal or irregular flan",
            "On a polygon a figure can be taken across the flats, across the corners, or along a side. The "
                    + "entry says which, and the methods statement repeats it. Common practice, no source.",
            """
                    # types/octagon.yaml
                    shape: polygonal
                    """,
            """
                    # types/octagon.yaml
                    shape: polygonal
                    diameter-means: across the flats
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
            if (!said && needsWords(each.type())) {
                PrintedDiameter.of(each, choice).ifPresent(one -> faults.add(
                        Finding.of(CODE, one.place(), one.path(),
                                "The diameter “" + one.recorded() + "” is given for a flan that is "
                                        + each.type().shape().value().word() + ", and nothing says what was measured.",
                                "Add “diameter-means” to the type “" + each.type().id() + "” or to this coin, such as: "
                                        + "diameter-means: across the flats.")));
            }
        }
        return faults;
    }

    private static boolean needsWords(Type type) {
        return type.shape().value() == Shape.POLYGONAL || type.shape().value() == Shape.IRREGULAR;
    }
}
