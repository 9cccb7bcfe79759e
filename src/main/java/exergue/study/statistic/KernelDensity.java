package exergue.study.statistic;

import exergue.study.Summary;
import java.util.Optional;

/**
 * A smooth curve through a sample: a Gaussian bell on every figure. Its width is Silverman's rule of thumb (Density
 * Estimation, London 1986, equation 3.31): 0.9 times the lesser of SD and interquartile range / 1.34, times n to the power of -1/5.
 *
 * <p>Figures are first shared out over the two nearest points of a fine grid, so that the time it takes does not grow with
 * the number of coins; that moves nothing by more than the grid is fine.
 */
public final class KernelDensity {

    /** Points of the curve. */
    private static final int POINTS = 512;
    /** So many bandwidths beyond the least and greatest figure the curve has come down. */
    private static final double CUT = 3;
    /** Beyond so many bandwidths a bell is nought. */
    private static final double REACH = 6;
    private static final double LIKE_SD = 1.34;

    private final double bandwidth;
    private final double least;
    private final double step;
    private final double[] bell;
    private final double[] heights;

    private KernelDensity(double bandwidth, double least, double step, double[] sorted) {
        this.bandwidth = bandwidth;
        this.least = least;
        this.step = step;
        this.bell = new double[(int) Math.min(POINTS, Math.ceil(REACH * bandwidth / step)) + 1];
        double height = 1 / (bandwidth * Math.sqrt(2 * Math.PI));
        for (int i = 0; i < bell.length; i++) {
            double far = i * step / bandwidth;
            bell[i] = height * StrictMath.exp(-far * far / 2);
        }
        this.heights = smoothed(shared(sorted));
    }

    /** Empty where a curve cannot be drawn: for fewer than two figures, and where all are equal. */
    public static Optional<KernelDensity> of(double[] sorted) {
        return bandwidth(sorted).map(width -> {
            double least = sorted[0] - CUT * width;
            double greatest = sorted[sorted.length - 1] + CUT * width;
            return new KernelDensity(width, least, (greatest - least) / (POINTS - 1), sorted);
        });
    }

    /** Silverman's; empty where it would be nought. */
    public static Optional<Double> bandwidth(double[] sorted) {
        if (sorted.length < 2) {
            return Optional.empty();
        }
        double sd = Summary.sd(sorted, Summary.mean(sorted));
        double middleHalf = (quartile(sorted, 0.75) - quartile(sorted, 0.25)) / LIKE_SD;
        double spread = middleHalf > 0 ? Math.min(sd, middleHalf) : sd;
        double width = 0.9 * spread * StrictMath.pow(sorted.length, -0.2);
        return width > 1e-9 ? Optional.of(width) : Optional.empty();
    }

    /** Definition 7 of Hyndman and Fan 1996, with which the rule is usually reckoned. */
    private static double quartile(double[] sorted, double p) {
        double position = (sorted.length - 1) * p;
        int below = (int) Math.floor(position);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (position - below) * (sorted[above] - sorted[below]);
    }

    public double bandwidth() {
        return bandwidth;
    }

    public int points() {
        return POINTS;
    }

    /** Where a point of the curve stands. */
    public double at(int point) {
        return least + point * step;
    }

    /** Density there, per unit of the figures. */
    public double height(int point) {
        return heights[point];
    }

    /** Where the curve is highest; of equal peaks the lowest figure. */
    public double peak() {
        return peak(heights);
    }

    /** The peak that other figures would have in place of the sample, with the same bandwidth. They must lie within the sample. */
    double peakOf(double[] figures) {
        return peak(smoothed(shared(figures)));
    }

    private double peak(double[] curve) {
        int highest = 0;
        for (int i = 1; i < POINTS; i++) {
            if (curve[i] > curve[highest]) {
                highest = i;
            }
        }
        return at(highest);
    }

    /** Each figure's weight on the two points of the grid that it lies between. */
    private double[] shared(double[] figures) {
        double[] shares = new double[POINTS];
        for (double figure : figures) {
            double position = (figure - least) / step;
            int below = Math.min(POINTS - 2, (int) position);
            shares[below] += 1 - (position - below);
            shares[below + 1] += position - below;
        }
        for (int i = 0; i < POINTS; i++) {
            shares[i] /= figures.length;
        }
        return shares;
    }

    private double[] smoothed(double[] shares) {
        double[] curve = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            if (shares[i] > 0) {
                int first = Math.max(0, i - bell.length + 1);
                int last = Math.min(POINTS - 1, i + bell.length - 1);
                for (int j = first; j <= last; j++) {
                    curve[j] += shares[i] * bell[Math.abs(i - j)];
                }
            }
        }
        return curve;
    }
}
