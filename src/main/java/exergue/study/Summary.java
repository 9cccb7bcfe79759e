package exergue.study;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a table of weights says of a group.
 *
 * @param n             how many figures
 * @param sd            with n - 1 in the denominator; empty for a single figure
 * @param lowerQuartile and the other quantiles by definition 8 of Hyndman and Fan 1996 (The American Statistician 50),
 *                      which does not lean to either side whatever the distribution
 */
public record Summary(int n, double mean, OptionalDouble sd, double least, double lowerQuartile, double median,
                      double upperQuartile, double greatest) {

    /** Empty where there are no figures. */
    public static Optional<Summary> of(List<Double> figures) {
        double[] sorted = figures.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(sorted);
        return ofSorted(sorted);
    }

    /** Empty where there are no figures. @param sorted the least first */
    public static Optional<Summary> ofSorted(double[] sorted) {
        if (sorted.length == 0) {
            return Optional.empty();
        }
        double mean = mean(sorted);
        OptionalDouble sd = sorted.length < 2 ? OptionalDouble.empty() : OptionalDouble.of(sd(sorted, mean));
        return Optional.of(new Summary(sorted.length, mean, sd, sorted[0], quantile(sorted, 0.25),
                quantile(sorted, 0.5), quantile(sorted, 0.75), sorted[sorted.length - 1]));
    }

    public static double mean(double[] figures) {
        return Arrays.stream(figures).sum() / figures.length;
    }

    public static double sd(double[] figures, double mean) {
        double squares = Arrays.stream(figures).map(figure -> (figure - mean) * (figure - mean)).sum();
        return Math.sqrt(squares / (figures.length - 1));
    }

    /** Hyndman and Fan 1996, definition 8: position (n + 1/3) p + 1/3 among the sorted figures, counted from 1. */
    public static double quantile(double[] sorted, double p) {
        double position = (sorted.length + 1 / 3.0) * p + 1 / 3.0;
        int below = (int) Math.floor(position);
        if (below < 1) {
            return sorted[0];
        }
        if (below >= sorted.length) {
            return sorted[sorted.length - 1];
        }
        return sorted[below - 1] + (position - below) * (sorted[below] - sorted[below - 1]);
    }
}
