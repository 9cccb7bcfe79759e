package exergue.measure;

import java.math.BigDecimal;
import java.util.Optional;

/** What follows from the size of a flan. */
public final class Flan {

    private static final BigDecimal PI = new BigDecimal("3.141592653589793238462643383279503");
    private static final BigDecimal FOUR = new BigDecimal("4");

    private Flan() { }

    /**
     * Surface of one side in mm², as if the flan were a circle, or an ellipse where two directions are given. An
     * approximation: edges are ragged and no coin is a true circle. Empty for ranges, whose two figures are no axes.
     */
    public static Optional<BigDecimal> surface(Reading.Read diameter) {
        if (diameter.kind() != Kind.DIAMETER || diameter.form() == Reading.Form.RANGE) {
            return Optional.empty();
        }
        BigDecimal one = diameter.first().value();
        BigDecimal other = diameter.normal().get(diameter.normal().size() - 1).value();
        return Optional.of(PI.multiply(one).multiply(other).divide(FOUR, Ratio.CARRIED));
    }
}
