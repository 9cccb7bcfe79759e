package exergue.measure;

import java.math.BigDecimal;

/**
 * A figure with its unit and its resolution: the smallest step the record shows, in the same unit
 * (0.01 for "3.87 g", 0.1 for "59.7 gr"). Never rounded on the way.
 */
public record Quantity(BigDecimal value, Unit unit, BigDecimal resolution) {

    /** This quantity in the normal unit of its kind, its resolution converted by the same factor. */
    public Quantity in(Unit normal) {
        if (unit.equals(normal)) {
            return this;
        }
        return new Quantity(unit.factor().times(value), normal, unit.factor().times(resolution));
    }
}
