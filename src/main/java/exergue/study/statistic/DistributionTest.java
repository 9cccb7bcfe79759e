package exergue.study.statistic;

import java.util.Arrays;

/**
 * Whether two samples have the same distribution: the test of Kolmogorov and Smirnov.
 *
 * @param d     greatest distance between the shares of figures up to some figure
 * @param p     of so great a distance or more, if there is no difference
 * @param exact true where p is counted over all ways to share the figures out, equal ones as they are (Schröer and Trenkler 1995,
 *              Computational Statistics and Data Analysis 20, 185–202; from memory): up to 10 000 pairs; otherwise by Kolmogorov's limit
 */
public record DistributionTest(double d, double p, boolean exact) {

    private static final long MOST_PAIRS = 10_000;
    private static final int TERMS = 100;

    /** @throws IllegalArgumentException if either has no figures */
    public static DistributionTest of(double[] first, double[] second) {
        if (first.length == 0 || second.length == 0) {
            throw new IllegalArgumentException("a sample without figures has no distribution");
        }
        double[] one = first.clone();
        double[] other = second.clone();
        Arrays.sort(one);
        Arrays.sort(other);
        double d = distance(one, other);
        boolean exact = (long) one.length * other.length <= MOST_PAIRS;
        return new DistributionTest(d, exact ? counted(one, other, d) : limit(one.length, other.length, d), exact);
    }

    private static double distance(double[] one, double[] other) {
        double greatest = 0;
        int i = 0;
        int j = 0;
        while (i < one.length && j < other.length) {
            double figure = Math.min(one[i], other[j]);
            while (i < one.length && one[i] == figure) {
                i++;
            }
            while (j < other.length && other[j] == figure) {
                j++;
            }
            greatest = Math.max(greatest, Math.abs((double) i / one.length - (double) j / other.length));
        }
        return greatest;
    }

    /**
     * Share of the paths through the grid of both samples that come as far from its diagonal as d, at a place where no two equal
     * figures meet. Reckoned with shares rather than counts of paths, which would be too great.
     */
    private static double counted(double[] one, double[] other, double d) {
        boolean[] ends = endsOfEqual(one, other);
        int m = one.length;
        int n = other.length;
        double[] within = new double[n + 1];
        for (int i = 0; i <= m; i++) {
            for (int j = 0; j <= n; j++) {
                double from = i + j == 0 ? 1 : (i > 0 ? within[j] * i / (i + j) : 0) + (j > 0 ? within[j - 1] * j / (i + j) : 0);
                boolean far = Math.abs((double) i / m - (double) j / n) >= d - 1e-9;
                within[j] = far && ends[i + j] ? 0 : from;
            }
        }
        return Math.max(0, Math.min(1, 1 - within[n]));
    }

    /** Whether the figure of that rank in both samples together, counted from 1, differs from the next one. */
    private static boolean[] endsOfEqual(double[] one, double[] other) {
        double[] all = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, all, one.length, other.length);
        Arrays.sort(all);
        boolean[] ends = new boolean[all.length + 1];
        for (int rank = 1; rank <= all.length; rank++) {
            ends[rank] = rank == all.length || all[rank - 1] != all[rank];
        }
        return ends;
    }

    /** 2 times the alternating sum of exp(-2 k² z²), z being d times sqrt(mn / (m + n)). */
    private static double limit(int m, int n, double d) {
        double z = d * Math.sqrt((double) m * n / (m + n));
        double sum = 0;
        for (int k = 1; k <= TERMS; k++) {
            sum += (k % 2 == 1 ? 2 : -2) * StrictMath.exp(-2.0 * k * k * z * z);
        }
        return z < 0.2 ? 1 : Math.max(0, Math.min(1, sum));
    }
}
