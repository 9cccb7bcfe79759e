package exergue.study.axis;

import exergue.study.statistic.Directions;
import java.util.Arrays;
import java.util.Optional;

/**
 * The axes of a group, summed up.
 *
 * @param hours   each, from 0 to less than 12, sorted
 * @param one     as they are
 * @param doubled with their angles doubled, so that opposite directions fall together
 */
record Axes(double[] hours, Directions one, Directions doubled) {

    static final int ON_THE_DIAL = 12;
    /** Circular standard deviation of an hour: 30 degrees; half of it counts where angles are doubled. */
    private static final double AN_HOUR = Math.PI / 6;
    private static final double LEVEL = 0.05;
    /** With fewer axes nothing can be told. A choice, no source. */
    private static final int FEWEST = 5;
    private static final double ROUNDING = 1e-9;

    /** @param sorted in clock hours, from 0 to less than 12 */
    static Axes of(double[] sorted) {
        double[] turns = Arrays.stream(sorted).map(hour -> hour / ON_THE_DIAL).toArray();
        double[] twice = Arrays.stream(sorted).map(hour -> hour * 2 / ON_THE_DIAL % 1).sorted().toArray();
        return new Axes(sorted, Directions.of(turns), Directions.of(twice));
    }

    int n() {
        return hours.length;
    }

    /** Resultant length, corrected for reading in whole hours where all are. */
    double r() {
        return inWholeHours() ? one.corrected(ON_THE_DIAL) : one.r();
    }

    /** The same of the doubled angles, for which a sector is twice as wide. */
    double rDoubled() {
        return inWholeHours() ? doubled.corrected(ON_THE_DIAL / 2) : doubled.r();
    }

    private boolean inWholeHours() {
        return Arrays.stream(hours).allMatch(hour -> Math.abs(hour - Math.rint(hour)) < ROUNDING);
    }

    /** How firmly the axis was fixed. */
    Verdict verdict() {
        if (n() < FEWEST) {
            return Verdict.TOO_FEW;
        }
        if (inTwoDirections()) {
            return spread(rDoubled()) / 2 <= AN_HOUR ? Verdict.FIXED_OPPOSITE : Verdict.LOOSELY_FIXED_OPPOSITE;
        }
        if (one.rayleigh() < LEVEL) {
            return spread(r()) <= AN_HOUR ? Verdict.FIXED : Verdict.LOOSELY_FIXED;
        }
        return Verdict.RANDOM;
    }

    /** Whether two opposite directions fit better than one. */
    boolean inTwoDirections() {
        return doubled.rayleigh() < LEVEL && doubled.r() > one.r();
    }

    /** Circular standard deviation, sqrt(-2 ln r), in radians (Zar 2010, equation 26.21; from memory). */
    private static double spread(double r) {
        return r <= 0 ? Double.POSITIVE_INFINITY : Math.sqrt(-2 * StrictMath.log(r));
    }

    /** In hours from 0 to 12; of two opposite directions that of less than 6; empty where the axes cancel each other. */
    Optional<Double> mean() {
        return inTwoDirections() ? doubled.mean().map(turn -> turn * ON_THE_DIAL / 2) : one.mean().map(turn -> turn * ON_THE_DIAL);
    }

    /** Axes no more than an hour from the hour nearest the mean, as axes are read, or from the opposite one where there are two. */
    int withinAnHour() {
        double around = inTwoDirections() ? ON_THE_DIAL / 2.0 : ON_THE_DIAL;
        return mean().map(mean -> (int) Arrays.stream(hours).filter(hour -> {
            double apart = Math.abs(hour - Math.rint(mean)) % around;
            return Math.min(apart, around - apart) <= 1 + ROUNDING;
        }).count()).orElse(0);
    }
}
