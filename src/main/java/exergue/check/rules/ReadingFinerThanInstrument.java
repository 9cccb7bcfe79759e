package exergue.check.rules;

import exergue.check.Hand;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Quantity;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Written;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A reading shows smaller steps than the resolution its convention declares. */
public final class ReadingFinerThanInstrument implements Rule {

    static final Code CODE = new Code("reading-finer-than-instrument", Severity.NOTE,
            "A figure is finer than the instrument it was taken with",
            "A balance that shows hundredths of a gram cannot have shown thousandths. Either the figure comes "
                    + "from elsewhere, or it was worked out, or the convention gives the wrong resolution.",
            """
                    # the convention says “resolution: 0.01 g”
                    weight: 3.873 g
                    """,
            """
                    weight: 3.87 g
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
                hand.measurement().readings().forEach((kind, written) ->
                        step(kind, hand.measurement().convention())
                                .filter(step -> finer(written.value(), step))
                                .ifPresent(step -> faults.add(fault(hand, kind, written, step))));
            }
        }
        return faults;
    }

    private static Optional<BigDecimal> step(Kind kind, Convention convention) {
        return switch (kind) {
            case WEIGHT -> convention.weighing().resolution();
            case DIAMETER, THICKNESS -> convention.sizing().resolution();
            case AXIS -> convention.turning().resolution();
        };
    }

    private static boolean finer(Reading reading, BigDecimal step) {
        return reading instanceof Reading.Read read && step.signum() > 0
                && read.normal().stream().anyMatch(figure -> finer(figure, step));
    }

    /** 20.5 mm is no finer than steps of half a millimetre, nor 180° than steps of an hour: both are whole steps. */
    private static boolean finer(Quantity figure, BigDecimal step) {
        return figure.resolution().compareTo(step) < 0 && figure.value().remainder(step).signum() != 0;
    }

    private static Finding fault(Hand hand, Kind kind, Written<Reading> written, BigDecimal step) {
        String unit = kind == Kind.AXIS ? " h" : kind == Kind.WEIGHT ? " g" : " mm";
        return Finding.of(CODE, written.place(), hand.path() + "." + kind.word(),
                "The " + kind.word() + " “" + written.value().recorded() + "” is finer than the resolution of "
                        + step.stripTrailingZeros().toPlainString() + unit + " that the convention “"
                        + hand.measurement().by() + "” declares.",
                "Look the figure up; if it is right, mend “resolution” in the convention, or give the figure under the "
                        + "convention it belongs to.");
    }
}
