package exergue.study.die;

import exergue.study.statistic.Interval;
import java.util.Optional;

/**
 * The share of all coins struck that came from dies known from the sample: C = 1 − d1/n, after I. J. Good, The population
 * frequencies of species and the estimation of population parameters, Biometrika 40 (1953), 237–264. Its interval is
 * C ± (2/n) √(d1 (1 − d1/n) + 2 d2), after W. W. Esty, A normal limit law for a nonparametric estimator of the coverage of a
 * random sample, Annals of Statistics 11 (1983), 905–912 (from memory), kept between none and all.
 *
 * @param share    0 to 1
 * @param interval empty for fewer than two coins
 */
public record Coverage(double share, Optional<Interval> interval) {

    /** Empty for no coins. */
    public static Optional<Coverage> of(DieCounts counts) {
        double n = counts.coins();
        if (n == 0) {
            return Optional.empty();
        }
        double singles = counts.singles();
        double share = 1 - singles / n;
        double reach = 2 / n * Math.sqrt(singles * share + 2.0 * counts.pairs());
        Optional<Interval> interval = n < 2 ? Optional.empty()
                : Optional.of(new Interval(Math.max(0, share - reach), Math.min(1, share + reach)));
        return Optional.of(new Coverage(share, interval));
    }
}
