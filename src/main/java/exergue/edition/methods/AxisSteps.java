package exergue.edition.methods;

import exergue.measure.Kind;
import exergue.measure.PrintForm;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** To what steps, in hours, the printed die-axes were read, one for each hand. */
public final class AxisSteps {

    private final List<Optional<BigDecimal>> steps;

    private AxisSteps(List<Optional<BigDecimal>> steps) {
        this.steps = steps;
    }

    public static AxisSteps of(Tally tally) {
        return new AxisSteps(tally.hands().stream().filter(hand -> hand.printed(Kind.AXIS) > 0)
                .map(hand -> hand.convention().turning().resolution()).toList());
    }

    /** The largest step of all; nothing if one of the hands does not say. */
    public Optional<BigDecimal> coarsest() {
        return steps.stream().allMatch(Optional::isPresent)
                ? steps.stream().flatMap(Optional::stream).max(BigDecimal::compareTo) : Optional.empty();
    }

    public boolean areSeveral() {
        return steps.stream().map(step -> step.map(BigDecimal::stripTrailingZeros)).distinct().count() > 1;
    }

    /** "6 h", "0,5 h", as the house prints hours. */
    public static String hours(BigDecimal hours, PrintForm form) {
        return form.decimal(hours.stripTrailingZeros()) + form.unitSpace() + form.hourSign();
    }
}
