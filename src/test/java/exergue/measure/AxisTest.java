package exergue.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AxisTest {

    private static final BigDecimal TWELVE = new BigDecimal("12");

    @ParameterizedTest(name = "{0} and {1} are {2} hours apart: common practice, no source")
    @CsvSource({"12, 1, 1", "11, 1, 2", "0, 12, 0", "6, 12, 6", "3, 9, 6", "1.5, 11, 2.5", "-1, 11, 0"})
    void difference(BigDecimal one, BigDecimal other, BigDecimal apart) {
        assertEquals(0, apart.compareTo(Axis.difference(one, other)));
    }

    @ParameterizedTest(name = "{0} on a mirror is {1}: common practice, no source")
    @CsvSource({"5, 7", "12, 12", "6, 6", "0, 12", "1.5, 10.5"})
    void mirrored(BigDecimal hours, BigDecimal mirrored) {
        assertEquals(0, mirrored.compareTo(Axis.mirrored(hours)));
    }

    /**
     * Each side's upright is seen on its own dial. Turning the whole coin changes the two dials in opposite ways; the
     * axis is what remains, and starting from the other side gives the same.
     */
    @Property
    void theAxisIsTheSameFromEitherSide(@ForAll("hours") BigDecimal obverse, @ForAll("hours") BigDecimal reverse,
                                        @ForAll("hours") BigDecimal turn) {
        BigDecimal fromObverse = Axis.between(obverse, reverse);
        assertEquals(0, fromObverse.compareTo(Axis.between(reverse, obverse)));
        assertEquals(0, fromObverse.compareTo(Axis.between(obverse.add(turn), reverse.subtract(turn).add(TWELVE))));
    }

    @Property
    void theClockIsOneRound(@ForAll("hours") BigDecimal hours) {
        BigDecimal clock = Axis.onClock(hours);
        assertTrue(clock.signum() > 0 && clock.compareTo(TWELVE) <= 0);
        assertEquals(0, clock.compareTo(Axis.onClock(hours.subtract(TWELVE))));
        assertEquals(0, clock.compareTo(Axis.mirrored(Axis.mirrored(hours))));
    }

    @Provide
    Arbitrary<BigDecimal> hours() {
        return Arbitraries.bigDecimals().between(BigDecimal.ZERO, TWELVE).ofScale(2);
    }
}
