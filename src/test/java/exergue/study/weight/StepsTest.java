package exergue.study.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.NotEmpty;
import org.junit.jupiter.api.Test;

class StepsTest {

    /** 3.90 g stands in the step that begins with it; reckoned with binary fractions it would fall below. */
    @Test
    void aStepTakesInItsLowerLimit() {
        double[] weights = {3.85, 3.90, 3.90, 3.95, 4.10};
        Steps steps = Steps.over(List.of(weights), new BigDecimal("0.05"));
        assertEquals(new BigDecimal("3.85"), steps.limit(0));
        assertEquals(List.of(1, 2, 1, 0, 0, 1), steps.counts(weights));
        assertEquals(2, steps.decimals());
    }

    @Property
    void everyWeightIsCountedOnce(@ForAll @NotEmpty List<@IntRange(min = 1, max = 4000) Integer> hundredths,
                                  @ForAll @IntRange(min = 1, max = 50) int width) {
        double[] weights = hundredths.stream().mapToDouble(one -> one / 100.0).sorted().toArray();
        Steps steps = Steps.over(List.of(weights), BigDecimal.valueOf(width, 2));
        List<Integer> counts = steps.counts(weights);
        assertEquals(weights.length, counts.stream().mapToInt(Integer::intValue).sum());
        assertEquals(1, Math.min(1, counts.get(0)));
        assertEquals(1, Math.min(1, counts.get(counts.size() - 1)));
        assertEquals(weights.length, Arrays.stream(weights).filter(weight -> weight >= steps.limit(0).doubleValue()
                && weight < steps.limit(steps.count()).doubleValue()).count());
    }
}
