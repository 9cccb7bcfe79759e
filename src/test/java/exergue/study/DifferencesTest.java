package exergue.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class DifferencesTest {

    /** Peak expiratory flow, litres a minute: Bland and Altman 1986, Lancet 327, table 1, first readings. */
    private static final int[] WRIGHT = {494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427};
    private static final int[] MINI = {512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451};

    /** The paper prints -2.1, 38.8, -79.7 and 75.5, the limits reckoned from the rounded figures. */
    @Test
    void peakFlowOfBlandAndAltman1986() {
        List<Differences.Point> points = new ArrayList<>();
        for (int i = 0; i < WRIGHT.length; i++) {
            points.add(new Differences.Point("" + i, (WRIGHT[i] + MINI[i]) / 2.0, WRIGHT[i] - MINI[i]));
        }
        Differences differences = Differences.of(points);
        assertEquals(17, differences.n());
        assertEquals(-2.117647, differences.bias(), 1e-6);
        assertEquals(38.765130, differences.sd(), 1e-6);
        assertEquals(-79.7, differences.lower(), 0.1);
        assertEquals(75.5, differences.upper(), 0.1);
    }

    @Property(tries = 200)
    void exchangingTheHandsTurnsTheFiguresOver(
            @ForAll @Size(min = 3, max = 30) List<@DoubleRange(min = -2, max = 2) Double> all) {
        Differences one = Differences.of(points(all, 1));
        Differences other = Differences.of(points(all, -1));
        assertEquals(one.bias(), -other.bias(), 1e-12);
        assertEquals(one.sd(), other.sd(), 1e-12);
        assertEquals(one.lower(), -other.upper(), 1e-12);
    }

    @Property(tries = 200)
    void theOrderOfTheCoinsChangesNotTheLastBit(
            @ForAll @Size(min = 3, max = 30) List<@DoubleRange(min = -2, max = 2) Double> all) {
        List<Double> turned = new ArrayList<>(all);
        Collections.reverse(turned);
        assertEquals(Differences.of(points(all, 1)).bias(), Differences.of(points(turned, 1)).bias());
        assertEquals(Differences.of(points(all, 1)).sd(), Differences.of(points(turned, 1)).sd());
    }

    @Test
    void twoCoinsAreTooFew() {
        assertThrows(IllegalArgumentException.class, () -> Differences.of(points(List.of(0.1, 0.2), 1)));
    }

    private static List<Differences.Point> points(List<Double> differences, int sign) {
        return differences.stream().map(d -> new Differences.Point("lk-1", 3.9, sign * d)).toList();
    }
}
