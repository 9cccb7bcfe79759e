package exergue.photo;

import exergue.photo.AxisFromOutlines.Angle;
import exergue.photo.AxisFromOutlines.CannotTell;
import exergue.photo.AxisFromOutlines.Reason;
import java.util.Arrays;
import org.hipparchus.complex.Complex;
import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;

/**
 * The die-axis from the edges of the two sides, both photographed with their designs upright.
 *
 * <p>Turn a coin, its obverse upright, about its vertical: its edge is now seen mirrored, and the reverse’s design stands
 * the axis off upright, clockwise. Whoever photographs the reverse turns the coin back by that angle. So the mirrored edge
 * of the reverse’s photograph is the edge of the obverse’s, turned clockwise by the axis; and that holds just the same with
 * the sides exchanged. The angle at which the two edges fit best is found by circular correlation of their distances from
 * the centre of gravity, and between the steps by a parabola through the three best.
 */
public final class TwoOutlines {

    /** Rounder than this, what differs from a circle is mostly the photograph’s own error. */
    private static final double ROUND = 0.008;
    private static final double LEAST_FIT = 0.85;
    /** Of what the next best angle leaves over, the best one must take away so much. */
    private static final double LEAST_CONFIDENCE = 0.65;
    /** Angles nearer than this belong to one peak. */
    private static final double ONE_PEAK = 20;
    private static final double CIRCLE = 360;

    private TwoOutlines() { }

    /** The axis, the same whichever side is called the obverse; or why it cannot be told. */
    public static AxisFromOutlines axis(Outline obverse, Outline reverse) {
        EdgeProfile one = EdgeProfile.of(obverse.edge());
        EdgeProfile other = EdgeProfile.of(reverse.mirrored().edge());
        if (Math.min(one.unevenness(), other.unevenness()) < ROUND) {
            return new CannotTell(Reason.TOO_ROUND);
        }
        double[] fits = fits(one, other);
        int best = highest(fits, Double.NaN);
        double degrees = between(fits, best);
        int next = highest(fits, degrees);
        if (fits[best] < LEAST_FIT) {
            return new CannotTell(Reason.NOT_ALIKE);
        }
        double confidence = 1 - (1 - fits[best]) / (1 - fits[next]);
        return confidence < LEAST_CONFIDENCE ? new CannotTell(Reason.FITS_TWICE)
                : new Angle(degrees, confidence, between(fits, next));
    }

    /** For each step clockwise that the first is turned: the correlation with the second, -1 to 1. */
    private static double[] fits(EdgeProfile one, EdgeProfile other) {
        FastFourierTransformer fourier = new FastFourierTransformer(DftNormalization.STANDARD);
        Complex[] first = fourier.transform(one.distances(), TransformType.FORWARD);
        Complex[] second = fourier.transform(other.distances(), TransformType.FORWARD);
        Complex[] product = new Complex[first.length];
        for (int i = 0; i < product.length; i++) {
            product[i] = second[i].multiply(first[i].conjugate());
        }
        double size = one.unevenness() * other.unevenness() * product.length;
        return Arrays.stream(fourier.transform(product, TransformType.INVERSE)).mapToDouble(sum -> sum.getReal() / size).toArray();
    }

    /** Index of the highest, not counting those that belong to the peak at so many degrees. */
    private static int highest(double[] fits, double besides) {
        int highest = -1;
        for (int i = 0; i < fits.length; i++) {
            boolean counts = Double.isNaN(besides) || apart(i * CIRCLE / fits.length, besides) > ONE_PEAK;
            if (counts && (highest < 0 || fits[i] > fits[highest])) {
                highest = i;
            }
        }
        return highest;
    }

    private static double apart(double degrees, double other) {
        double apart = Math.abs(degrees - other) % CIRCLE;
        return Math.min(apart, CIRCLE - apart);
    }

    private static double between(double[] fits, int peak) {
        double before = fits[Math.floorMod(peak - 1, fits.length)];
        double after = fits[Math.floorMod(peak + 1, fits.length)];
        double bend = before - 2 * fits[peak] + after;
        double part = bend >= 0 ? 0 : (before - after) / (2 * bend);
        double degrees = (peak + Math.max(-1, Math.min(1, part))) * CIRCLE / fits.length;
        return (degrees + CIRCLE) % CIRCLE;
    }
}
