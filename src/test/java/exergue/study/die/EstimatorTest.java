package exergue.study.die;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Every estimator against values from elsewhere; those whose formula is known from memory say so in the name of the test. */
class EstimatorTest {

    /** n coins of d dies, of which d1 are known from one coin and d2 from two; the other coins fall to the other dies as they may. */
    private static DieCounts sample(int n, int d, int d1, int d2) {
        List<Integer> coins = new ArrayList<>();
        int others = d - d1 - d2;
        int left = n - d1 - 2 * d2 - 3 * others;
        for (int die = 0; die < d; die++) {
            coins.add(die < d1 ? 1 : die < d1 + d2 ? 2 : 3);
        }
        if (left > 0) {
            coins.set(d - 1, 3 + left);
        }
        DieCounts counts = DieCounts.of(coins);
        assertEquals(List.of(n, d, d1, d2), List.of(counts.coins(), counts.dies(), counts.singles(), counts.pairs()));
        return counts;
    }

    private static double dies(Estimator estimator, DieCounts counts) {
        return estimator.of(counts).dies().orElseThrow();
    }

    /**
     * The method after Villaronga, Good's estimator: qblay.com, Estimation of the number of original dies, table of coins,
     * dies, singletons, estimated dies and per cent known.
     */
    @ParameterizedTest
    @CsvSource({"318, 69, 12, 72, 96.2", "316, 76, 15, 80, 95.3", "250, 50, 7, 51, 97.2", "135, 19, 3, 19, 97.8", "408, 91, 16, 95, 96.1",
            "90, 24, 12, 28, 86.7", "541, 94, 14, 96, 97.4", "98, 18, 1, 18, 99.0", "231, 47, 8, 49, 96.5",
            "107, 19, 4, 20, 96.3", "304, 51, 10, 53, 96.7", "2176, 534, 146, 572, 93.3"})
    void goodAsPublishedForASeriesOfRomanBronzes(int n, int d, int d1, int original, double known) {
        DieCounts counts = sample(n, d, d1, 0);
        assertEquals(original, dies(Estimator.GOOD_1953, counts), 0.5 + 1e-9);
        assertEquals(known, 100 * Coverage.of(counts).orElseThrow().share(), 0.05 + 1e-9);
    }

    /** Coefficients from memory; figures reckoned from them in R 4.2.2. */
    @ParameterizedTest
    @CsvSource({"100, 60, 121.0165", "100, 50, 81.1688", "100, 40, 55.7414", "100, 20, 22.2124", "60, 20, 25.3807"})
    void carterFromMemory(int n, int d, double original) {
        assertEquals(original, dies(Estimator.CARTER_1983, withSo(n, d)), 5e-5);
    }

    /** Any sample of n coins and d dies will do. */
    private static DieCounts withSo(int n, int d) {
        List<Integer> coins = new ArrayList<>(Collections.nCopies(d - 1, 1));
        coins.add(n - d + 1);
        return DieCounts.of(coins);
    }

    /** Formulas from memory; figures reckoned from them in R 4.2.2, but Good's d/C and Chao's, which are published. */
    @Test
    void sideBySide() {
        DieCounts counts = sample(100, 60, 35, 15);
        assertEquals(88.2020, dies(Estimator.EQUAL_DIES, counts), 5e-5);
        assertEquals(92.3077, dies(Estimator.GOOD_1953, counts), 5e-5);
        assertEquals(119.2308, dies(Estimator.ESTY_2006, counts), 5e-5);
        assertEquals(150, dies(Estimator.ESTY_2011, counts), 1e-9);
        assertEquals(60 + 35 * 34 / 32.0, dies(Estimator.CHAO_1984, counts), 1e-9);
    }

    /** C by Good 1953; the interval by Esty 1983 is from memory, its figure reckoned in R 4.2.2. */
    @Test
    void coverageFromMemory() {
        Coverage coverage = Coverage.of(sample(100, 60, 35, 15)).orElseThrow();
        assertEquals(0.65, coverage.share(), 1e-12);
        assertEquals(0.65 - 0.14526, coverage.interval().orElseThrow().from(), 5e-6);
        assertEquals(0.65 + 0.14526, coverage.interval().orElseThrow().to(), 5e-6);
    }

    /** scikit-bio 0.5, skbio.diversity.alpha, tests of chao1 and chao1_ci: counts 0, 1, 1, 4, 2, 5, 2, 4, 1, 2. */
    @Test
    void chaoAsInTheTestsOfScikitBio() {
        Estimate estimate = Estimator.CHAO_1984.of(DieCounts.of(List.of(1, 1, 4, 2, 5, 2, 4, 1, 2)));
        assertEquals(9.75, estimate.dies().orElseThrow(), 1e-12);
        assertEquals(9.07, estimate.interval().orElseThrow().from(), 0.005);
        assertEquals(17.45, estimate.interval().orElseThrow().to(), 0.005);
    }

    /** The trees of Barro Colorado, counted over all plots, as the estimate stands in the documentation of R's package vegan. */
    @Test
    void chaoAsInTheExampleOfVegan() {
        assertEquals(117.473684, dies(Estimator.CHAO_1984, sample(448, 93, 31, 18)), 5e-7);
    }

    @Test
    void withoutADieTwiceOnlyChaoHasAFigure() {
        DieCounts counts = DieCounts.of(List.of(1, 1, 1, 1, 1));
        for (Estimate estimate : Estimator.all(counts)) {
            assertEquals(estimate.by() == Estimator.CHAO_1984, estimate.dies().isPresent(), estimate.by().title());
        }
        assertEquals(15, dies(Estimator.CHAO_1984, counts), 1e-12);
        assertEquals(List.of(Caution.NO_DIE_TWICE, Caution.FEW_COINS), Caution.of(counts));
    }

    @Test
    void noCoinsHaveNoEstimate() {
        DieCounts nothing = DieCounts.of(List.of());
        assertTrue(Estimator.all(nothing).stream().allMatch(estimate -> estimate.dies().isEmpty() && estimate.interval().isEmpty()));
        assertEquals(Optional.empty(), Coverage.of(nothing));
        assertEquals(List.of(), Caution.of(nothing));
    }

    @Test
    void oneDieOfManyCoinsIsOneDie() {
        DieCounts counts = DieCounts.of(List.of(40));
        assertEquals(1, dies(Estimator.EQUAL_DIES, counts), 1e-9);
        assertEquals(1, dies(Estimator.GOOD_1953, counts), 1e-9);
        assertEquals(OptionalDouble.of(1), Estimator.CHAO_1984.of(counts).dies());
        assertEquals(Optional.empty(), Estimator.CHAO_1984.of(counts).interval());
        assertEquals(List.of(), Caution.of(counts));
    }

    /** Two coins a die: L. Villaronga, as quoted at qblay.com. */
    @Test
    void fewCoinsADieAreCautionedAgainst() {
        assertEquals(List.of(Caution.FEWER_THAN_TWO_A_DIE), Caution.of(sample(100, 60, 35, 15)));
        assertEquals(List.of(), Caution.of(sample(90, 24, 12, 0)));
    }

    @Test
    void onlyChaoGivesAnInterval() {
        assertEquals(List.of(Estimator.CHAO_1984), Estimator.all(sample(100, 60, 35, 15)).stream()
                .filter(estimate -> estimate.interval().isPresent()).map(Estimate::by).toList());
    }

    /** Invented samples, reckoned in R 4.2.2 by src/test/resources/study/dies/estimates.R. */
    @ParameterizedTest
    @CsvFileSource(resources = "/study/dies/estimates.csv", useHeadersInDisplayName = true, maxCharsPerColumn = 2000)
    void asR(ArgumentsAccessor row) {
        DieCounts counts = DieCounts.of(Arrays.stream(row.getString(0).split(" ")).map(Integer::valueOf).toList());
        Coverage coverage = Coverage.of(counts).orElseThrow();
        Estimate chao = Estimator.CHAO_1984.of(counts);
        List<Double> found = List.of((double) counts.coins(), (double) counts.dies(), (double) counts.singles(), (double) counts.pairs(),
                coverage.share(), coverage.interval().orElseThrow().from(), coverage.interval().orElseThrow().to(),
                dies(Estimator.EQUAL_DIES, counts), dies(Estimator.GOOD_1953, counts), dies(Estimator.CARTER_1983, counts),
                dies(Estimator.ESTY_2006, counts), dies(Estimator.ESTY_2011, counts), dies(Estimator.CHAO_1984, counts),
                chao.interval().orElseThrow().from(), chao.interval().orElseThrow().to());
        for (int i = 0; i < found.size(); i++) {
            double expected = row.getDouble(i + 1);
            assertEquals(expected, found.get(i), 1e-6 * Math.max(1, expected), "column " + (i + 2));
        }
    }
}
