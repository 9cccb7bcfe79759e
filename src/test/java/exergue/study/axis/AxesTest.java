package exergue.study.axis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.study.figure.Wording;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class AxesTest {

    /** Invented axes; mean, resultant and p were reckoned in R 4.2.2 from Zar's formula. */
    @Test
    void aFixedAxis() {
        Axes axes = hours(12, 12, 1, 11, 12, 6, 12, 1, 11, 12, 2, 12);
        assertEquals(5.518242 / 30, axes.mean().orElseThrow(), 1e-6);
        assertEquals(0.7504865, axes.one().r(), 1e-7);
        assertEquals(0.0004700, axes.one().rayleigh(), 1e-7);
        assertEquals(Verdict.LOOSELY_FIXED, axes.verdict());
        assertEquals(10, axes.withinAnHour());
    }

    /** A test for one direction misses what is fixed up and down. Invented axes; r and p by R 4.2.2. */
    @Test
    void anAxisFixedUpAndDown() {
        Axes axes = hours(12, 12, 12, 12, 12, 12, 12, 12, 12, 6, 6, 6, 6, 6, 6, 6, 1, 7, 5, 11);
        assertEquals(0.1, axes.one().r(), 1e-9);
        assertEquals(0.8224, axes.one().rayleigh(), 1e-4);
        assertEquals(0.9, axes.doubled().r(), 1e-9);
        assertTrue(axes.inTwoDirections());
        assertEquals(Verdict.FIXED_OPPOSITE, axes.verdict());
        assertEquals("12.0/6.0", AxisTables.mean(axes, Wording.PLAIN));
        assertEquals(20, axes.withinAnHour());
    }

    @Test
    void anAxisThatIsNotFixed() {
        assertEquals(Verdict.RANDOM, hours(12, 3, 6, 9, 1, 4, 7, 10).verdict());
        assertEquals("–", AxisTables.mean(hours(12, 3, 6, 9), Wording.PLAIN));
        assertEquals(Verdict.TOO_FEW, hours(12, 12, 12, 12).verdict());
        assertEquals(Verdict.FIXED, hours(12, 12, 12, 12, 12).verdict());
    }

    @Test
    void halvesCountForBothHours() {
        assertEquals(List.of(1.5, 0.5, 0.0, 0.0, 0.0, 0.0, 1.0, 0.0, 0.0, 0.0, 0.0, 0.0),
                HourCounts.of(new double[] {0, 0.5, 6.2}));
        assertEquals(0.5, HourCounts.of(new double[] {11.5}).get(11));
        assertEquals(0.5, HourCounts.of(new double[] {11.5}).get(0));
    }

    @Property
    void turningAllAxesTurnsTheMeanAndNothingElse(@ForAll @Size(min = 5, max = 30) List<@IntRange(max = 11) Integer> written,
                                                  @ForAll @IntRange(max = 11) int turn) {
        int[] hours = written.stream().mapToInt(Integer::intValue).toArray();
        Axes before = hours(hours);
        Axes after = hours(Arrays.stream(hours).map(hour -> hour + turn).toArray());
        assertEquals(before.r(), after.r(), 1e-9);
        assertEquals(before.rDoubled(), after.rDoubled(), 1e-9);
        if (before.mean().isPresent() && after.mean().isPresent() && Math.abs(before.doubled().r() - before.one().r()) > 1e-6) {
            assertEquals(before.verdict(), after.verdict());
            double around = before.inTwoDirections() ? 6 : 12;
            double apart = Math.abs(before.mean().get() + turn - after.mean().get()) % around;
            assertEquals(0, Math.min(apart, around - apart), 1e-6);
        }
    }

    /** Fisher's exact test in R 4.2.2; see statistic/expected.R. */
    @Test
    void strictnessIsComparedAsInR() {
        assertEquals(0.0108215129303, AxisComparison.probability(42, 45, 5, 9), 1e-9);
        assertEquals(0.642414860681, AxisComparison.probability(8, 11, 5, 9), 1e-9);
        assertEquals(1, AxisComparison.probability(9, 9, 4, 4));
    }

    private static Axes hours(int... hours) {
        return Axes.of(Arrays.stream(hours).mapToDouble(hour -> hour % 12).sorted().toArray());
    }
}
