package exergue.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.demo.Flan.Corner;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What drawn coins call true must be true without any picture. */
class FlanTest {

    /** Geometry of squares and circles: diagonal a√2, area a²; diameter 2r, area πr². */
    @Test
    void knownShapes() {
        Flan square = new Flan(List.of(new Corner(-5, -5), new Corner(5, -5), new Corner(5, 5), new Corner(-5, 5)), List.of());
        assertEquals(10, square.vertical(), 1e-12);
        assertEquals(10, square.least(), 1e-12);
        assertEquals(10 * Math.sqrt(2), square.greatest(), 1e-12);
        assertEquals(100, square.area(), 1e-12);
        Flan round = circle(9).pierced(circle(1).edge());
        assertEquals(18, round.greatest(), 1e-9);
        assertEquals(Math.PI * (81 - 1), round.area(), 0.02);
    }

    private static Flan circle(double radius) {
        List<Corner> edge = new ArrayList<>();
        for (int i = 0; i < 720; i++) {
            edge.add(new Corner(radius * Math.cos(Math.PI * i / 360), radius * Math.sin(Math.PI * i / 360)));
        }
        return new Flan(edge, List.of());
    }

    /**
     * A coin in the hand: a mark on its edge stands at so many hours on the obverse; turned about the vertical it stands
     * as many hours on the other side of twelve; the reverse’s top now points to the axis, and is turned back upright
     * with everything on it.
     */
    @ParameterizedTest
    @CsvSource({"12, 12, 12", "12, 6, 6", "12, 3, 9", "3, 12, 9", "3, 6, 3", "1, 11, 12", "2, 5, 5", "8, 1, 3"})
    void markOnTheEdge(int markOnObverse, int axis, int markOnReverse) {
        double turn = Math.toRadians(markOnObverse * 30);
        Flan mark = new Flan(List.of(new Corner(Math.sin(turn), -Math.cos(turn))), List.of());
        Corner seen = mark.turnedOver(axis * 30).edge().get(0);
        double hours = Math.toDegrees(Math.atan2(seen.x(), -seen.y())) / 30;
        assertEquals(0, Math.IEEEremainder(hours - markOnReverse, 12), 1e-9);
    }

    @Property(tries = 40)
    void turnedOverTwiceIsTheSameWhicheverSideIsFirst(@ForAll @IntRange(max = 10_000) int seed, @ForAll @DoubleRange(max = 360) double axis) {
        Flan flan = new FlanMaker(seed).struck(1, 2);
        Flan back = flan.turnedOver(axis).turnedOver(axis);
        for (int i = 0; i < flan.edge().size(); i++) {
            assertEquals(flan.edge().get(i).x(), back.edge().get(i).x(), 1e-9);
            assertEquals(flan.edge().get(i).y(), back.edge().get(i).y(), 1e-9);
        }
        assertEquals(flan.area(), flan.turnedOver(axis).area(), 1e-9);
        assertEquals(flan.greatest(), flan.turnedOver(axis).greatest(), 1e-9);
    }

    @Property(tries = 30)
    void fittedFlansHaveTheRecordedDiameters(@ForAll @IntRange(max = 10_000) int seed, @ForAll @DoubleRange(min = 8, max = 35) double vertical) {
        Flan flan = FittedFlan.vertical(new FlanMaker(seed).struck(0.85, 2), seed % 80 - 40, vertical, vertical * 1.03);
        assertEquals(vertical, flan.vertical(), 1e-9);
        Flan oval = FittedFlan.leastAndGreatest(new FlanMaker(seed).struck(1, 1), seed % 360, vertical * 0.8, vertical);
        assertEquals(vertical, oval.greatest(), 1e-9);
        assertEquals(vertical * 0.8, oval.least(), vertical * 0.002);
    }
}
