package exergue.study;

import java.math.BigDecimal;
import java.util.List;

/**
 * How far two hands differ in weights or diameters of the same coins, after Bland and Altman 1986 (Lancet 327,
 * 307–310): the mean difference, its spread, and the limits between which most differences are expected.
 *
 * @param points one for each coin, in the order of the catalogue
 * @param bias   mean of the differences, first hand less second, in g or mm
 * @param sd     standard deviation of the differences, with n - 1 in the denominator
 * @param lower  bias less two standard deviations, as the paper reckons it
 * @param upper  bias and two standard deviations
 */
public record Differences(List<Point> points, double bias, double sd, double lower, double upper) {

    /** With fewer coins the spread says nothing. */
    static final int FEWEST = 3;

    public Differences {
        points = List.copyOf(points);
    }

    /**
     * One coin read twice.
     *
     * @param coin       its id
     * @param mean       of its two figures
     * @param difference first hand less second
     */
    public record Point(String coin, double mean, double difference) { }

    /** @throws IllegalArgumentException for fewer than three coins */
    static Differences of(List<Point> points) {
        if (points.size() < FEWEST) {
            throw new IllegalArgumentException("fewer than " + FEWEST + " coins have no spread worth telling");
        }
        // sorted, since the last bit of a sum hangs on the order of its members, and a rounded figure on that bit
        double[] all = points.stream().mapToDouble(Point::difference).sorted().toArray();
        double bias = Summary.mean(all);
        double sd = Summary.sd(all, bias);
        return new Differences(points, bias, sd, bias - 2 * sd, bias + 2 * sd);
    }

    public int n() {
        return points.size();
    }

    /** As far as they are worth printing: 2 decimals of a gram, 1 of a millimetre. */
    public Rounded rounded(int decimals) {
        return new Rounded(n(), Figure.rounded(bias, decimals), Figure.rounded(lower, decimals),
                Figure.rounded(upper, decimals));
    }

    /** @param coins read by both; @param mean difference, and the limits of agreement, in g or mm */
    public record Rounded(int coins, BigDecimal mean, BigDecimal lower, BigDecimal upper) { }
}
