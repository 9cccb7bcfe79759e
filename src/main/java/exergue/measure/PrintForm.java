package exergue.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How a figure is printed.
 *
 * @param weightDecimals   most decimals of a weight; fewer are never padded
 * @param diameterDecimals most decimals of a diameter; a thickness, being a tenth of it, gets one more
 * @param rounding         half-even or half-up
 * @param decimalMark      {@code "."} or {@code ","}
 * @param unitSpace        what stands between figure and unit: narrow no-break space, no-break space or nothing
 * @param hourSign         what stands for hours: {@code "h"}
 * @param circa            what stands before a figure that is about right: {@code "c."}
 */
public record PrintForm(int weightDecimals, int diameterDecimals, RoundingMode rounding, String decimalMark,
                        String unitSpace, String hourSign, String circa) {

    /** What weighings to a milligram support; common practice, no source. */
    private static final int DENSITY_DECIMALS = 2;

    public static final PrintForm DEFAULT =
            new PrintForm(2, 0, RoundingMode.HALF_EVEN, ".", "\u202F", "h");

    public PrintForm(int weightDecimals, int diameterDecimals, RoundingMode rounding, String decimalMark,
                     String unitSpace, String hourSign) {
        this(weightDecimals, diameterDecimals, rounding, decimalMark, unitSpace, hourSign, "c.");
    }

    /** A figure with the decimal mark of the book and all its decimals. */
    public String decimal(BigDecimal value) {
        return value.toPlainString().replace(".", decimalMark);
    }

    /** Most decimals that a figure of this kind gets; an axis is printed in whole and half hours. */
    public int decimals(Kind kind) {
        return switch (kind) {
            case WEIGHT -> weightDecimals;
            case DIAMETER -> diameterDecimals;
            case THICKNESS -> diameterDecimals + 1;
            case DENSITY -> DENSITY_DECIMALS;
            case AXIS, SURFACE -> 0;
        };
    }
}
