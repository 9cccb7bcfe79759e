package exergue.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpreadTest {

    private static final List<Double> WEIGHTS = List.of(3.95, 3.90, 3.85, 3.98, 3.92, 2.10);

    /** The formula is that of Iglewicz and Hoaglin 1993; the figures were worked out from it in R. */
    @Test
    void modifiedZByIglewiczAndHoaglin1993() {
        Spread spread = Spread.of(WEIGHTS);
        assertEquals(3.91, spread.median(), 1e-12);
        assertEquals(0.05, spread.mad(), 1e-12);
        assertEquals(-24.4169, spread.modifiedZ(2.10), 1e-4);
    }

    @Test
    void reachIsWhereTheModifiedZIsThreeAndAHalf() {
        Spread spread = Spread.of(WEIGHTS);
        assertEquals(3.5, spread.modifiedZ(spread.median() + spread.reach()), 1e-9);
    }

    @Test
    void equalFiguresHaveNoSpreadButTheFloorGivesThemOne() {
        Spread equal = Spread.of(List.of(3.9, 3.9, 3.9, 3.9, 3.9));
        assertEquals(0, equal.mad());
        assertTrue(Double.isFinite(equal.atLeast(0.015).modifiedZ(4.0)));
        assertEquals(0.05, Spread.of(WEIGHTS).atLeast(0.015).mad(), 1e-12);
    }

    @Test
    void noFiguresHaveNoMiddle() {
        assertThrows(IllegalArgumentException.class, () -> Spread.of(List.of()));
    }
}
