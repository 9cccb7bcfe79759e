package exergue.study.statistic;

import exergue.study.Summary;
import java.util.Optional;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/** Intervals of 95 per cent for the middle of a sample. */
public final class Intervals {

    private static final double TAIL = 0.025;

    private Intervals() { }

    /** Standard error of the mean: SD / sqrt(n); empty for fewer than two figures. */
    public static Optional<Double> standardError(double[] sorted) {
        if (sorted.length < 2) {
            return Optional.empty();
        }
        return Optional.of(Summary.sd(sorted, Summary.mean(sorted)) / Math.sqrt(sorted.length));
    }

    /** Student's t with n - 1 degrees of freedom; empty for fewer than two figures. */
    public static Optional<Interval> ofMean(double[] sorted) {
        return standardError(sorted).map(error -> {
            double reach = TDistribution.of(sorted.length - 1.0).inverseSurvivalProbability(TAIL) * error;
            double mean = Summary.mean(sorted);
            return new Interval(mean - reach, mean + reach);
        });
    }

    /**
     * By order statistics (Conover, Practical Nonparametric Statistics, interval of a quantile; from memory): the figures of such
     * ranks that the true median lies outside with no more than five per cent, whatever the distribution. Empty for fewer than six
     * figures, for which there is no such interval.
     */
    public static Optional<Interval> ofMedian(double[] sorted) {
        int n = sorted.length;
        if (n < 1) {
            return Optional.empty();
        }
        int below = BinomialDistribution.of(n, 0.5).inverseCumulativeProbability(TAIL);
        if (below < 1) {
            return Optional.empty();
        }
        return Optional.of(new Interval(sorted[below - 1], sorted[n - below]));
    }
}
