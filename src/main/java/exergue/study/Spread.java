package exergue.study;

import java.util.Arrays;
import java.util.List;

/**
 * Middle and spread of some figures, by measures that a few wild ones cannot move.
 *
 * @param median the middle figure, or the mean of the two in the middle
 * @param mad    median of the absolute deviations from the median
 */
public record Spread(double median, double mad) {

    /** A figure whose modified z is beyond this is an outlier: Iglewicz and Hoaglin 1993. */
    public static final double OUTLIER = 3.5;

    /** Makes the modified z of normal figures like an ordinary z: Iglewicz and Hoaglin 1993. */
    private static final double LIKE_Z = 0.6745;

    /** @throws IllegalArgumentException if there are no figures */
    public static Spread of(List<Double> figures) {
        double median = median(figures);
        return new Spread(median, median(figures.stream().map(figure -> Math.abs(figure - median)).toList()));
    }

    /** @param sorted the least first; at least one figure */
    public static Spread ofSorted(double[] sorted) {
        double median = middle(sorted);
        double[] deviations = Arrays.stream(sorted).map(figure -> Math.abs(figure - median)).sorted().toArray();
        return new Spread(median, middle(deviations));
    }

    /** The same middle, with a spread of no less than {@code least}: equal weights must not make every coin an outlier. */
    Spread atLeast(double least) {
        return new Spread(median, Math.max(mad, least));
    }

    /** 0.6745 (x - median) / MAD; the MAD must not be 0. */
    public double modifiedZ(double figure) {
        return LIKE_Z * (figure - median) / mad;
    }

    /** How far from the median a figure may lie before it is an outlier. */
    double reach() {
        return OUTLIER * mad / LIKE_Z;
    }

    private static double median(List<Double> figures) {
        if (figures.isEmpty()) {
            throw new IllegalArgumentException("no figures have no middle");
        }
        double[] sorted = figures.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(sorted);
        return middle(sorted);
    }

    private static double middle(double[] sorted) {
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
