package exergue.edition;

import exergue.model.PrintScale;
import java.math.BigDecimal;

/**
 * A scale that is drawn on paper, in millimetres of the coins: at 2:1 each of them is two long.
 *
 * @param length in millimetres of the coins; 0 for no scale
 * @param scale  at which the coins beside it are printed
 */
public record DrawnScale(int length, PrintScale scale) {

    private static final int TEN = 10;

    /** As the house asks for it; where that is wider than there is room for, as many tens, or else as many millimetres, as there is. */
    static DrawnScale fitting(int wanted, PrintScale scale, BigDecimal room) {
        int most = room.multiply(new BigDecimal(scale.coin())).divideToIntegralValue(new BigDecimal(scale.paper())).intValue();
        int length = wanted <= most ? wanted : most >= TEN ? most / TEN * TEN : most;
        return new DrawnScale(length, scale);
    }

    public boolean isDrawn() {
        return length > 0;
    }

    /** So many millimetres of the coins in millimetres of paper. */
    public BigDecimal onPaper(int millimetres) {
        return scale.times(new BigDecimal(millimetres));
    }
}
