package exergue.study.statistic;

import java.util.stream.DoubleStream;
import org.apache.commons.statistics.inference.MannWhitneyUTest;
import org.apache.commons.statistics.inference.PValueMethod;

/**
 * Whether the figures of one sample tend to be greater than those of another: Mann and Whitney 1947 (Annals of Mathematical
 * Statistics 18, 50–60; from memory).
 *
 * @param u     pairs in which the figure of the first sample is the greater, equal ones counted as half
 * @param p     of so uneven a U or more, in either direction, if there is no difference
 * @param exact true where p is counted over all orders: under 50 figures each and none equal; otherwise it is by the normal
 *              approximation, corrected for equal figures and for continuity
 * @param share u over all pairs: how often a figure of the first is greater than one of the second; a half means no difference
 */
public record RankTest(double u, double p, boolean exact, double share) {

    private static final int EXACT_BELOW = 50;

    /** @throws IllegalArgumentException if either has no figures */
    public static RankTest of(double[] first, double[] second) {
        boolean exact = first.length < EXACT_BELOW && second.length < EXACT_BELOW && noneEqual(first, second);
        MannWhitneyUTest.Result result = MannWhitneyUTest.withDefaults()
                .with(exact ? PValueMethod.EXACT : PValueMethod.ASYMPTOTIC).test(first, second);
        double pairs = (double) first.length * second.length;
        double p = Double.isNaN(result.getPValue()) ? 1 : Math.min(1, result.getPValue());
        return new RankTest(result.getStatistic(), p, exact, result.getStatistic() / pairs);
    }

    /** Cliff's delta (Psychological Bulletin 114, 1993, 494–509; from memory): from -1, the first always less, to 1, always greater. */
    public double delta() {
        return 2 * share - 1;
    }

    private static boolean noneEqual(double[] first, double[] second) {
        return DoubleStream.concat(DoubleStream.of(first), DoubleStream.of(second)).distinct().count() == first.length + second.length;
    }
}
