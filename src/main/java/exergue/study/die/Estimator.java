package exergue.study.die;

import exergue.study.statistic.Interval;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * A published way to reckon the number of dies from a sample of coins. n coins, d dies, d1 dies known from one coin, d2 from
 * two, C the coverage. None has a value for a sample without any two coins of one die, except Chao's.
 */
public enum Estimator {

    /** D (1 − (1 − 1/D)^n) = d, solved for D. */
    EQUAL_DIES("Equal dies", "expected number of classes seen in n draws, solved for the number of classes; textbook probability",
            EqualDies::of),

    /** d / C. */
    GOOD_1953("Good 1953", "I. J. Good, Biometrika 40 (1953), 237–264", counts -> counts.dies() / coverage(counts)),

    /** One of three formulas, by the number of coins a die. */
    CARTER_1983("Carter 1983", "G. F. Carter, American Numismatic Society Museum Notes 28 (1983), 195–206; coefficients from memory",
            Estimator::carter),

    /** (d / C) (1 + d1 / (2 d)). */
    ESTY_2006("Esty 2006", "W. W. Esty, Numismatic Chronicle 166 (2006), 359–364; attribution from memory",
            counts -> counts.dies() / coverage(counts) * (1 + counts.singles() / (2.0 * counts.dies()))),

    /** n d / (n − d). */
    ESTY_2011("Esty 2011", "W. W. Esty, The geometric model for estimating the number of dies, 2011; attribution from memory",
            counts -> (double) counts.coins() * counts.dies() / (counts.coins() - counts.dies())),

    /** d + d1 (d1 − 1) / (2 (d2 + 1)), which has a value without pairs too. */
    CHAO_1984("Chao 1984", "A. Chao, Scandinavian Journal of Statistics 11 (1984), 265–270, corrected for bias; interval: "
            + "A. Chao, Biometrics 43 (1987), 783–791", Chao::of);

    private final String title;
    private final String source;
    private final ToDoubleFunction<DieCounts> formula;

    Estimator(String title, String source, ToDoubleFunction<DieCounts> formula) {
        this.title = title;
        this.source = source;
        this.formula = formula;
    }

    /** As a table names it. */
    public String title() {
        return title;
    }

    /** Where it was published. */
    public String source() {
        return source;
    }

    /** All of them, in the order in which they grow under the same sample as a rule. */
    public static List<Estimate> all(DieCounts counts) {
        return Arrays.stream(values()).map(estimator -> estimator.of(counts)).toList();
    }

    public Estimate of(DieCounts counts) {
        boolean linked = counts.dies() > 0 && (this == CHAO_1984 || counts.coins() > counts.dies());
        double dies = linked ? formula.applyAsDouble(counts) : Double.NaN;
        return new Estimate(this, Double.isFinite(dies) ? OptionalDouble.of(dies) : OptionalDouble.empty(),
                linked && this == CHAO_1984 ? Chao.interval(counts) : Optional.empty());
    }

    private static double coverage(DieCounts counts) {
        return 1 - counts.singles() / (double) counts.coins();
    }

    private static double carter(DieCounts counts) {
        double n = counts.coins();
        double d = counts.dies();
        if (n < 2 * d) {
            return n * d / (1.214 * n - 1.197 * d);
        }
        return n < 3 * d ? n * d / (1.124 * n - 1.016 * d) : n * d / (1.069 * n - 0.843 * d);
    }
}
