package exergue.study.statistic;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.study.Spread;
import exergue.study.Summary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every statistic against R 4.2.2, on published and on seeded data; see expected.R. */
class AgainstRTest {

    private static final double EXACT = 1e-9;

    @ParameterizedTest
    @ValueSource(strings = {"michelson", "drachms", "worn", "seven"})
    void summariesAreThoseOfR(String name) {
        double[] sorted = Expected.sorted(name + ".sample");
        Summary summary = Summary.ofSorted(sorted).orElseThrow();
        assertEquals(Expected.one(name + ".mean"), summary.mean(), EXACT);
        assertEquals(Expected.one(name + ".sd"), summary.sd().orElseThrow(), EXACT);
        assertArrayEquals(Expected.all(name + ".quartiles"),
                new double[] {summary.lowerQuartile(), summary.median(), summary.upperQuartile()}, 1e-8);
        assertEquals(Expected.one(name + ".se"), Intervals.standardError(sorted).orElseThrow(), EXACT);
        assertEquals(Expected.one(name + ".mad"), Spread.ofSorted(sorted).mad(), EXACT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"michelson", "drachms", "worn", "seven"})
    void intervalsAreThoseOfR(String name) {
        double[] sorted = Expected.sorted(name + ".sample");
        Interval mean = Intervals.ofMean(sorted).orElseThrow();
        assertArrayEquals(Expected.all(name + ".interval.mean"), new double[] {mean.from(), mean.to()}, 1e-8);
        Interval median = Intervals.ofMedian(sorted).orElseThrow();
        assertArrayEquals(Expected.all(name + ".interval.median"), new double[] {median.from(), median.to()}, EXACT);
    }

    /** R bins and interpolates in ways of its own, so peak and height agree to a step of the grid and to a part in a thousand. */
    @ParameterizedTest
    @ValueSource(strings = {"michelson", "drachms", "worn", "seven"})
    void densitiesAreThoseOfR(String name) {
        double[] sorted = Expected.sorted(name + ".sample");
        KernelDensity density = KernelDensity.of(sorted).orElseThrow();
        assertEquals(Expected.one(name + ".bandwidth"), density.bandwidth(), EXACT);
        assertEquals(Expected.one(name + ".peak"), density.peak(), 1.01 * (density.at(1) - density.at(0)));
        double highest = 0;
        for (int i = 0; i < density.points(); i++) {
            highest = Math.max(highest, density.height(i));
        }
        assertEquals(Expected.one(name + ".height"), highest, 2e-3 * highest);
    }

    @ParameterizedTest
    @CsvSource({"hollander, true", "schroeer, false", "ties, false", "large, false"})
    void comparisonsAreThoseOfR(String name, boolean exactRanks) {
        double[] first = Expected.sorted(name + ".first");
        double[] second = Expected.sorted(name + ".second");
        RankTest ranks = RankTest.of(first, second);
        assertEquals(Expected.one(name + ".u"), ranks.u(), EXACT);
        assertEquals(Expected.one(name + ".u.p"), ranks.p(), 1e-8);
        assertEquals(exactRanks, ranks.exact());
        DistributionTest distribution = DistributionTest.of(first, second);
        assertEquals(Expected.one(name + ".d"), distribution.d(), EXACT);
        assertEquals(Expected.one(name + ".d.p"), distribution.p(), 1e-8);
        assertEquals((long) first.length * second.length <= 10_000, distribution.exact());
    }

    /** R drew other samples, 20 000 of them; the limits agree to a quarter of the bandwidth. */
    @Test
    void theIntervalOfThePeakIsNearThatOfR() {
        double[] sorted = Expected.sorted("drachms.sample");
        Peak peak = Peak.of(sorted).orElseThrow();
        double near = KernelDensity.bandwidth(sorted).orElseThrow() / 4;
        assertArrayEquals(Expected.all("drachms.interval.peak"), new double[] {peak.interval().from(), peak.interval().to()}, near);
        assertTrue(peak.at() >= peak.interval().from() && peak.at() <= peak.interval().to());
        assertEquals(peak, Peak.of(sorted).orElseThrow());
    }

    /** Fisher's approximation is good to about a part in a hundred. */
    @ParameterizedTest
    @ValueSource(strings = {"0.2", "0.4", "0.6", "0.8", "0.9", "0.95"})
    void theConcentrationIsNearTheExactOne(String r) {
        double exact = Expected.one("kappa." + r);
        assertEquals(exact, Directions.concentration(Double.parseDouble(r), 100).orElseThrow(), 0.012 * exact);
    }
}
