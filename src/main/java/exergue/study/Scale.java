package exergue.study;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * An axis of a plot with round ticks.
 *
 * @param least    first figure on it
 * @param greatest last figure on it
 * @param from     where the first lies in the drawing
 * @param to       where the last lies
 * @param step     between ticks: 1, 2 or 5 times a power of ten
 */
public record Scale(double least, double greatest, double from, double to, BigDecimal step) {

    /** No more ticks than this, and one. */
    private static final int TICKS = 8;
    /** Share of the span left free at both ends. */
    private static final double MARGIN = 0.05;

    public static Scale over(double least, double greatest, double from, double to) {
        double span = greatest > least ? greatest - least : Math.max(Math.abs(least), 1);
        double low = least - span * MARGIN;
        double high = greatest + span * MARGIN;
        return new Scale(low, high, from, to, step((high - low) / TICKS));
    }

    public double at(double value) {
        return from + (value - least) / (greatest - least) * (to - from);
    }

    public List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        BigDecimal tick = BigDecimal.valueOf(least).divide(step, 0, RoundingMode.CEILING).multiply(step);
        while (tick.doubleValue() <= greatest) {
            ticks.add(tick.doubleValue());
            tick = tick.add(step);
        }
        return ticks;
    }

    /** Decimals that the ticks need. */
    public int decimals() {
        return Math.max(0, step.stripTrailingZeros().scale());
    }

    /** The smallest of 1, 2, 5, 10 times a power of ten that is not less than {@code rough}. */
    public static BigDecimal step(double rough) {
        BigDecimal exact = BigDecimal.valueOf(rough);
        BigDecimal power = BigDecimal.ONE.scaleByPowerOfTen(exact.precision() - exact.scale() - 1);
        for (int times : new int[] {1, 2, 5}) {
            BigDecimal step = power.multiply(BigDecimal.valueOf(times));
            if (step.compareTo(exact) >= 0) {
                return step;
            }
        }
        return power.multiply(BigDecimal.TEN);
    }
}
