package exergue.study.statistic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class DirectionsTest {

    /** Zar, Biostatistical Analysis, 5th edition 2010, examples 26.4 and 27.1, as quoted by those who teach from it. */
    @Test
    void eightDirectionsOfZar() {
        Directions directions = degrees(45, 55, 81, 96, 110, 117, 132, 154);
        assertEquals(99, directions.mean().orElseThrow() * 360, 0.5);
        assertEquals(0.82522, directions.r(), 5e-6);
        assertEquals(5.448, directions.n() * directions.r() * directions.r(), 1e-3);
        assertTrue(directions.rayleigh() > 0.001 && directions.rayleigh() < 0.002);
        assertEquals(0.00185164, directions.rayleigh(), 1e-7); // reckoned in R 4.2.2 from the formula
    }

    /** Zar 2010, example 26.5, as quoted: twelve sectors of 30 degrees, the first from 0 to 30. */
    @Test
    void sectorsOfZar() {
        int[] counts = {0, 6, 9, 13, 15, 22, 17, 12, 8, 3, 0, 0};
        Directions directions = degrees(IntStream.range(0, 12).flatMap(i -> IntStream.generate(() -> 15 + 30 * i).limit(counts[i])).toArray());
        assertEquals(-0.52238, directions.x(), 5e-6);
        assertEquals(0.17413, directions.y(), 5e-6);
        assertEquals(0.55064, directions.r(), 5e-6);
        assertEquals(162, directions.mean().orElseThrow() * 360, 0.5);
        assertEquals(0.55697572, directions.corrected(12), 1e-5);
        assertEquals(1.01151516, degrees(30).corrected(12) > 1 ? 0 : directions.corrected(12) / directions.r(), 1e-8);
    }

    @Test
    void whatCancelsHasNoMean() {
        assertEquals(Optional.empty(), degrees(0, 180).mean());
        assertEquals(Optional.empty(), degrees(0, 90, 180, 270).mean());
        assertEquals(Optional.empty(), degrees().mean());
        assertEquals(1, degrees(90, 90, 90).corrected(12));
    }

    @Test
    void concentrationWithoutEndIsNotPrinted() {
        assertEquals(Optional.empty(), Directions.concentration(1, 40));
        assertTrue(Directions.concentration(0.9, 10).orElseThrow() < Directions.concentration(0.9, 100).orElseThrow());
    }

    @Property
    void turningAllDirectionsTurnsTheMean(@ForAll @Size(min = 1, max = 30) List<@IntRange(max = 359) Integer> written,
                                          @ForAll @IntRange(max = 359) int turn) {
        int[] degrees = written.stream().mapToInt(Integer::intValue).toArray();
        Directions before = degrees(degrees);
        Directions after = degrees(Arrays.stream(degrees).map(one -> one + turn).toArray());
        assertEquals(before.r(), after.r(), 1e-9);
        assertEquals(before.rayleigh(), after.rayleigh(), 1e-9);
        if (before.r() > 1e-6) {
            double turned = (before.mean().orElseThrow() * 360 + turn - after.mean().orElseThrow() * 360) % 360;
            assertEquals(0, Math.min(Math.abs(turned), 360 - Math.abs(turned)), 1e-6);
        }
    }

    @Property
    void probabilitiesAreProbabilities(@ForAll @Size(min = 1, max = 40) List<@IntRange(max = 359) Integer> written,
                                       @ForAll @DoubleRange(min = 0, max = 1) double r) {
        int[] degrees = written.stream().mapToInt(Integer::intValue).toArray();
        double p = degrees(degrees).rayleigh();
        assertTrue(p >= 0 && p <= 1, () -> "p = " + p);
        assertTrue(Directions.concentration(r, degrees.length).orElse(0.0) >= 0);
    }

    private static Directions degrees(int... degrees) {
        return Directions.of(Arrays.stream(degrees).mapToDouble(one -> one / 360.0).toArray());
    }
}
