package exergue.study;

import exergue.measure.Quantity;
import exergue.measure.Reading;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Readings as numbers to reckon with, and numbers as words to print. */
public final class Figure {

    private static final String MINUS = "\u2212";

    private Figure() { }

    /** In g, mm or hours; of a reading with two figures their mean. */
    public static double of(Reading.Read reading) {
        return reading.normal().stream().map(Quantity::value).mapToDouble(BigDecimal::doubleValue).average()
                .orElseThrow();
    }

    /** False for a figure that says of itself that the true one is less or more. */
    public static boolean isExact(Reading.Read reading) {
        return reading.qualifier() != Reading.Qualifier.LESS_THAN
                && reading.qualifier() != Reading.Qualifier.MORE_THAN;
    }

    /** With so many decimals and a true minus sign; "0.00" has no sign. */
    public static String words(double value, int decimals) {
        BigDecimal rounded = rounded(value, decimals);
        return (rounded.signum() < 0 ? MINUS : "") + rounded.abs().toPlainString();
    }

    public static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
    }
}
