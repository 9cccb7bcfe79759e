package exergue.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Die-axes in clock hours: how far the reverse is turned clockwise from upright when the coin, its obverse upright,
 * is turned about its vertical axis. Twelve and nought are one; the clock is written from just above 0 to 12.
 */
public final class Axis {

    private static final BigDecimal TWELVE = new BigDecimal("12");
    private static final BigDecimal SIX = new BigDecimal("6");
    private static final BigDecimal HALF = new BigDecimal("0.5");

    private Axis() { }

    /** The same direction on the clock, more than 0 and at most 12. */
    public static BigDecimal onClock(BigDecimal hours) {
        BigDecimal rest = hours.remainder(TWELVE);
        return rest.signum() <= 0 ? rest.add(TWELVE) : rest;
    }

    /** The reading of someone who counted anticlockwise, or looked at a mirror: 5 h for 7 h. */
    public static BigDecimal mirrored(BigDecimal hours) {
        return onClock(TWELVE.subtract(onClock(hours)));
    }

    /** The shorter way round between two axes, 0 to 6 hours. */
    public static BigDecimal difference(BigDecimal hours, BigDecimal others) {
        BigDecimal apart = onClock(hours).subtract(onClock(others)).abs();
        return apart.compareTo(SIX) > 0 ? TWELVE.subtract(apart) : apart;
    }

    /**
     * The axis of a coin of which both uprights are known, each in hours on the dial one sees with that side up,
     * the coin turned about the vertical between the two looks. It is the same from whichever side one starts.
     */
    public static BigDecimal between(BigDecimal upright, BigDecimal otherUpright) {
        return onClock(onClock(upright).add(onClock(otherUpright)));
    }

    /** True exactly half way between two hours. */
    public static boolean midway(BigDecimal hours) {
        return hours.remainder(BigDecimal.ONE).abs().compareTo(HALF) == 0;
    }

    /** The nearest whole hour as printed, 1 to 12; a midway reading stays a half. */
    static BigDecimal printed(BigDecimal hours) {
        BigDecimal clock = onClock(hours);
        return midway(clock) ? clock : onClock(clock.setScale(0, RoundingMode.HALF_UP));
    }
}
