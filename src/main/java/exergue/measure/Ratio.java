package exergue.measure;

import java.math.BigDecimal;
import java.math.MathContext;

/** A factor kept exact as a fraction, because some old units have no finite decimal (a Paris ligne is 1000/443.296 mm). */
public record Ratio(BigDecimal numerator, BigDecimal denominator) {

    /** What a quotient without a finite decimal is carried to; far beyond any balance. */
    public static final MathContext CARRIED = MathContext.DECIMAL128;

    public static final Ratio ONE = of("1");

    public Ratio {
        if (denominator.signum() <= 0 || numerator.signum() <= 0) {
            throw new IllegalArgumentException("a factor is positive");
        }
    }

    public static Ratio of(String exact) {
        return new Ratio(new BigDecimal(exact), BigDecimal.ONE);
    }

    public static Ratio of(String numerator, String denominator) {
        return new Ratio(new BigDecimal(numerator), new BigDecimal(denominator));
    }

    /** {@code value} times this factor: exact where a finite decimal exists, else carried to 34 digits. */
    public BigDecimal times(BigDecimal value) {
        BigDecimal product = value.multiply(numerator);
        return denominator.compareTo(BigDecimal.ONE) == 0 ? product : product.divide(denominator, CARRIED);
    }
}
