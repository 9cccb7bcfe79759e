package exergue.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ScaleTest {

    @Test
    void ticksAreRound() {
        Scale scale = Scale.over(0, 4, 0, 100);
        assertEquals("1", scale.step().stripTrailingZeros().toPlainString());
        assertEquals(0, scale.decimals());
        assertEquals(List.of(0.0, 1.0, 2.0, 3.0, 4.0), scale.ticks());
    }

    @Test
    void aSmallSpanNeedsDecimals() {
        assertEquals(2, Scale.over(-0.05, 0.06, 0, 100).decimals());
    }

    @Property(tries = 300)
    void everyTickLiesOnTheAxis(@ForAll @DoubleRange(min = -100, max = 100) double one,
            @ForAll @DoubleRange(min = -100, max = 100) double other) {
        Scale scale = Scale.over(Math.min(one, other), Math.max(one, other), 300, 20);
        assertTrue(scale.ticks().size() <= 9, scale::toString);
        for (double tick : scale.ticks()) {
            assertTrue(scale.at(tick) <= 300.001 && scale.at(tick) >= 19.999, scale::toString);
        }
    }
}
