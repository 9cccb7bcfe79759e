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

/** A photograph says nothing of its scale, so that it can be printed life-size only by the coin's diameter, or not at all. */
public final class PhotographWithoutWidth implements Rule {

    static final Code CODE = new Code("photograph-without-width", Severity.NOTE,
            "A photograph that does not say how wide it is at life size",
            "Coins are shown as large as they are. A picture has white around the coin, so that its own width at life size "
                    + "has to be known; it can be measured on a scale in the photograph. Without it the picture is "
                    + "printed as wide as the coin’s greatest diameter, and the coin comes out a little too small.",
            """
                    photograph: {obverse: photographs/lk-1.jpg}
                    """,
            """
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
            Optional<Place> picture = each.coin().photograph().filter(photo -> !saysItsWidth(photo))
                    .flatMap(photo -> photo.obverse().or(photo::reverse)).map(Written::place);
            boolean sized = choice.choose(each.coin(), each.type(), Kind.DIAMETER).figure().isPresent();
            picture.ifPresent(place -> faults.add(Finding.of(CODE, place, "photograph",
                    "The photographs of “" + each.coin().id().value() + "” do not say how wide they are at life size"
                            + (sized ? "; they are printed as wide as the coin’s diameter."
                            : ", and the coin has no diameter; they are printed 20 mm wide, not to scale."),
                    "Add the width of the whole picture, such as “width: 24.3 mm”.")));
        }
        return faults;
    }

    private static boolean saysItsWidth(Coin.Photograph photograph) {
        return photograph.width().filter(width -> width.value() instanceof Reading.Read).isPresent();
    }
}
