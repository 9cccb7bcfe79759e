package exergue.study.statistic;

import java.util.Optional;

/**
 * Directions on a circle, summed up. Formulas after Zar, Biostatistical Analysis, 5th edition 2010, ch. 26 and 27, unless others
 * are named.
 *
 * @param n       how many
 * @param x       mean of the cosines
 * @param y       mean of the sines
 */
public record Directions(int n, double x, double y) {

    /** Resultants below this are nought but for rounding. */
    private static final double NOUGHT = 1e-9;
    /** Below this the estimate of the concentration is corrected for small samples. */
    private static final int SMALL = 15;

    /** @param turns each direction as a share of the whole circle, sorted */
    public static Directions of(double[] turns) {
        double cosines = 0;
        double sines = 0;
        for (double turn : turns) {
            cosines += StrictMath.cos(2 * Math.PI * turn);
            sines += StrictMath.sin(2 * Math.PI * turn);
        }
        return turns.length == 0 ? new Directions(0, 0, 0) : new Directions(turns.length, cosines / turns.length, sines / turns.length);
    }

    /** Resultant length: 0 where the directions cancel each other, 1 where all are the same. */
    public double r() {
        return Math.hypot(x, y);
    }

    /** The mean direction, as a share of the circle; empty where the directions cancel each other, and for none. */
    public Optional<Double> mean() {
        if (r() < NOUGHT) {
            return Optional.empty();
        }
        double turn = StrictMath.atan2(y, x) / (2 * Math.PI);
        return Optional.of(turn < 0 ? turn + 1 : turn);
    }

    /**
     * Resultant length corrected for grouping into sectors: r (d/2) / sin(d/2), d being the width of one (Zar 2010, equation 26.16
     * as quoted); never more than 1.
     *
     * @param sectors into which the circle is divided
     */
    public double corrected(int sectors) {
        double half = Math.PI / sectors;
        return Math.min(1, r() * half / StrictMath.sin(half));
    }

    /**
     * Probability of so long a resultant if all directions are equally likely: Rayleigh's test in the approximation of Zar 2010,
     * equation 27.4, exp(sqrt(1 + 4n + 4(n² - R²)) - (1 + 2n)).
     */
    public double rayleigh() {
        double resultant = n * r();
        double exponent = Math.sqrt(1 + 4.0 * n + 4 * ((double) n * n - resultant * resultant)) - (1 + 2.0 * n);
        return Math.min(1, StrictMath.exp(exponent));
    }

    /**
     * Concentration of a von Mises distribution for a resultant length: Fisher, Statistical Analysis of Circular Data, 1993,
     * equations 4.40 and 4.41 (from memory). Empty for r = 1, where it has no end, and where a small sample gives nothing.
     */
    public static Optional<Double> concentration(double r, int n) {
        if (r > 1 - NOUGHT || n < 2) {
            return Optional.empty();
        }
        double kappa = r < 0.53 ? 2 * r + r * r * r + 5 * StrictMath.pow(r, 5) / 6
                : r < 0.85 ? -0.4 + 1.39 * r + 0.43 / (1 - r) : 1 / (r * r * r - 4 * r * r + 3 * r);
        if (n > SMALL) {
            return Optional.of(kappa);
        }
        return Optional.of(kappa < 2 ? Math.max(kappa - 2 / (n * kappa), 0)
                : (n - 1.0) * (n - 1) * (n - 1) * kappa / ((double) n * n * n + n)).filter(value -> !value.isNaN());
    }
}
