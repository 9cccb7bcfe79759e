package exergue.edition.methods;

import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.PrintForm;
import exergue.measure.Ratio;
import exergue.measure.Unit;
import exergue.measure.Units;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * The step to which a hand read its figures, in the unit it read them in: 0.01 g, 0.1 grain, 1/16 inch.
 *
 * @param size in that unit
 */
public record ReadTo(BigDecimal size, Unit unit) {

    /** Nothing where the convention does not say, or says nothing of this kind. */
    public static Optional<ReadTo> of(Convention convention, Kind kind) {
        return switch (kind) {
            case WEIGHT -> of(convention.weighing().resolution(), convention.weighing().unit(), Units.GRAM);
            case DIAMETER -> of(convention.sizing().resolution(), convention.sizing().unit(), Units.MILLIMETRE);
            case AXIS -> of(convention.turning().resolution(), Optional.empty(), Units.HOUR);
            default -> Optional.empty();
        };
    }

    private static Optional<ReadTo> of(Optional<BigDecimal> normal, Optional<Unit> own, Unit usual) {
        Unit unit = own.orElse(usual);
        return normal.map(step -> unit.isNormal() ? new ReadTo(step, usual) : new ReadTo(
                new Ratio(unit.factor().denominator(), unit.factor().numerator()).times(step), unit));
    }

    /** Halves to sixty-fourths stand as fractions, as rules are divided, where that is shorter than the decimals. */
    public String figure(PrintForm form) {
        for (int parts = 4; parts <= 64 && !unit.isNormal(); parts *= 2) {
            if (size.multiply(BigDecimal.valueOf(parts)).compareTo(BigDecimal.ONE) == 0) {
                return "1/" + parts;
            }
        }
        return form.decimal(size.signum() == 0 ? BigDecimal.ZERO : size.stripTrailingZeros());
    }
}
