package exergue.study.die;

import exergue.study.statistic.Interval;
import java.util.Optional;

/**
 * Chao's estimator without the bias of small samples, and its interval: the logarithm of the dies not seen is taken to be
 * normal, so that the interval never begins below the dies seen.
 */
final class Chao {

    /** 95 of 100, both sides. */
    private static final double NORMAL_95 = 1.959963984540054;

    private Chao() { }

    static double of(DieCounts counts) {
        return counts.dies() + unseen(counts);
    }

    private static double unseen(DieCounts counts) {
        double singles = counts.singles();
        return singles * (singles - 1) / (2.0 * (counts.pairs() + 1));
    }

    /** Empty where the estimate is the dies seen: there is no interval about none. */
    static Optional<Interval> interval(DieCounts counts) {
        double unseen = unseen(counts);
        if (unseen == 0) {
            return Optional.empty();
        }
        double singles = counts.singles();
        double pairs = counts.pairs() + 1.0;
        double variance = unseen + singles * Math.pow(2 * singles - 1, 2) / (4 * pairs * pairs)
                + singles * singles * counts.pairs() * Math.pow(singles - 1, 2) / (4 * Math.pow(pairs, 4));
        double reach = Math.exp(NORMAL_95 * Math.sqrt(Math.log1p(variance / (unseen * unseen))));
        return Optional.of(new Interval(counts.dies() + unseen / reach, counts.dies() + unseen * reach));
    }
}
