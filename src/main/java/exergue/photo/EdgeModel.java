package exergue.photo;

import java.util.Arrays;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * What the light across an edge looks like through a lens: on either side it changes evenly, at the edge it jumps, and all
 * of it is blurred by a Gaussian. A rim that slopes away darkens towards its edge, and a ground darkens towards the coin that
 * shades it; so the place where half of the light has changed is not the edge. Here the edge is put where this model, its four
 * figures fitted by least squares, leaves least over.
 */
final class EdgeModel {

    /** What of a profile is free to vary once the model is fitted. */
    static final int FREEDOM = 2 * 9 + 1 - 5;
    /** Samples lie this far apart, this many on either side of where the edge is thought to be. */
    static final double STEP = 0.5;
    static final int REACH = 9;
    private static final double FARTHEST = 3;
    private static final double FINE = 0.25;
    static final int PLACES = (int) (2 * FARTHEST / FINE) + 1;
    private static final double[] BLURS = {0.5, 0.75, 1.0, 1.3, 1.7, 2.2};
    private static final EdgeModel[] ALL = Arrays.stream(BLURS).mapToObj(EdgeModel::new).toArray(EdgeModel[]::new);

    private final double[][][] bases = new double[PLACES][][];

    private EdgeModel(double blur) {
        for (int i = 0; i < PLACES; i++) {
            bases[i] = basis(i * FINE - FARTHEST, blur);
        }
    }

    /** For each blur that is thought of. */
    static EdgeModel[] all() {
        return ALL.clone();
    }

    /** Four curves, at right angles to each other, of which every profile with its edge here is the sum. */
    private static double[][] basis(double edge, double blur) {
        RealMatrix curves = MatrixUtils.createRealMatrix(2 * REACH + 1, 4);
        for (int i = 0; i <= 2 * REACH; i++) {
            double in = edge - (i - REACH) * STEP;
            double covered = cumulative(in / blur);
            double ramp = in * covered + blur * Math.exp(-in * in / (2 * blur * blur)) / Math.sqrt(2 * Math.PI);
            curves.setRow(i, new double[] {covered, 1 - covered, ramp, ramp - in});
        }
        return new QRDecomposition(curves).getQ().getSubMatrix(0, 2 * REACH, 0, 3).transpose().getData();
    }

    /** Of the normal distribution, by the formula 26.2.17 of Abramowitz and Stegun, good to 7.5e-8. */
    private static double cumulative(double x) {
        double t = 1 / (1 + 0.2316419 * Math.abs(x));
        double tail = Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI)
                * t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return x > 0 ? 1 - tail : tail;
    }

    /** Places between which the edge may lie, from the innermost to the outermost, in pixels out from the middle sample. */
    static double place(int number) {
        return number * FINE - FARTHEST;
    }

    /** Where between the places the least is, by a parabola through it and its neighbours. */
    static double between(double[] left, int number) {
        if (number == 0 || number == PLACES - 1) {
            return place(number);
        }
        double bend = left[number - 1] - 2 * left[number] + left[number + 1];
        double part = bend <= 0 ? 0 : (left[number - 1] - left[number + 1]) / (2 * bend);
        return place(number) + Math.max(-0.5, Math.min(0.5, part)) * FINE;
    }

    /** For each place what the model leaves over if the edge lies there: the sum of squares. Samples run from inside to outside. */
    double[] left(double[] samples) {
        double[] left = new double[PLACES];
        for (int i = 0; i < PLACES; i++) {
            left[i] = left(samples, bases[i]);
        }
        return left;
    }

    private static double left(double[] samples, double[][] basis) {
        double left = 0;
        for (double sample : samples) {
            left += sample * sample;
        }
        for (double[] curve : basis) {
            double along = 0;
            for (int i = 0; i < samples.length; i++) {
                along += curve[i] * samples[i];
            }
            left -= along * along;
        }
        return Math.max(0, left);
    }
}
