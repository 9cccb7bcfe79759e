package exergue.check.rules;

import exergue.check.CoinOfType;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.finding.Severity;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.ReadingChoice;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Neither a photograph nor a diameter says how large the coin is, so that it cannot be printed life-size. */
public final class PhotographWithoutWidth implements Rule {

    static final Code CODE = new Code("photograph-without-width", Severity.NOTE,
            "A photograph of a coin of which nobody knows how large it is",
            "Coins are shown as large as they are: the picture is cut out along the coin’s edge and printed so that the recorded "
                    + "diameter is exact. Where there is none, the width of the whole picture at life size does the same; it can be "
                    + "measured on a scale in the photograph. Without either the coin is shown 20 mm wide, not to scale.",
            """
                    measured: {by: bench, weight: 3.87 g, diameter: 'missing: not taken', axis: 6 h}
                    photograph: {obverse: photographs/lk-1.jpg}
                    """,
            """
                    measured: {by: bench, weight: 3.87 g, diameter: 'missing: not taken', axis: 6 h}
                    photograph: {obverse: photographs/lk-1.jpg, width: 24.3 mm}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        ReadingChoice choice = ReadingChoice.of(catalogue.style());
        List<Finding> faults = new ArrayList<>();
        for (CoinOfType each : CoinOfType.all(catalogue)) {
            boolean sized = choice.choose(each.coin(), each.type(), Kind.DIAMETER).figure().isPresent();
            Optional<Place> picture = each.coin().photograph().filter(photo -> !sized && !saysItsWidth(photo))
                    .flatMap(photo -> photo.obverse().or(photo::reverse)).map(Written::place);
            picture.ifPresent(place -> faults.add(Finding.of(CODE, place, "photograph",
                    "The photographs of “" + each.coin().id().value() + "” do not say how wide they are at life size, and the coin has "
                            + "no diameter; it is printed 20 mm wide, not to scale.",
                    "Measure the coin, or add the width of the whole picture, such as “width: 24.3 mm”.")));
        }
        return faults;
    }

    private static boolean saysItsWidth(Coin.Photograph photograph) {
        return photograph.width().filter(width -> width.value() instanceof Reading.Read).isPresent();
    }
}
