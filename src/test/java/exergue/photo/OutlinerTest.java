package exergue.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.photo.Outlined.Found;
import exergue.photo.Outlined.Reason;
import exergue.photo.Outlined.Refused;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Coins of known shape on plain grounds: what is found, and what is refused. */
class OutlinerTest {

    private static final double[] SILVER = {0.45, 0.44, 0.42};
    private static final double[] WHITE = {0.95, 0.95, 0.95};

    /** The edge is looked for as the eye sees it, which on a dark ground sets it out by up to a quarter of a pixel on either side. */
    @ParameterizedTest(name = "ground {0} {1} {2}")
    @CsvSource({"0.95, 0.95, 0.95", "1, 1, 1", "0.02, 0.02, 0.02", "0, 0, 0", "0.1, 0.2, 0.6", "0.5, 0.1, 0.1", "0.2, 0.2, 0.2"})
    void ellipseOnAnyPlainGroundIsDrawnToHalfAPixel(double red, double green, double blue) {
        DoubleBinaryOperator shape = Painted.ellipse(new Point(150.3, 139.6), 110, 96, 25);
        Found found = found(Painted.plain(300, 290, shape, SILVER, new double[] {red, green, blue}));
        Outline outline = found.outlines().get(0);
        assertEquals(1, found.outlines().size());
        assertEquals(220, outline.greatest().length(), 0.5);
        assertEquals(192, outline.least().length(), 0.5);
        assertEquals(Math.PI * 110 * 96, outline.area(), 0.005 * Math.PI * 110 * 96);
        assertEquals(150.3, outline.centroid().x(), 0.05);
        assertEquals(139.6, outline.centroid().y(), 0.05);
        assertEquals(25, outline.greatest().degrees(), 3);
        assertTrue(found.confidence() > 0.95);
    }

    @Test
    void nicksAndHolesAreKept() {
        DoubleBinaryOperator flan = Painted.ellipse(new Point(150, 150), 110, 108, 0);
        DoubleBinaryOperator nick = Painted.ellipse(new Point(150, 38), 18, 8, 0);
        DoubleBinaryOperator hole = Painted.ellipse(new Point(180, 170), 9, 9, 0);
        Outline whole = found(Painted.plain(300, 300, flan, SILVER, WHITE)).outlines().get(0);
        Outline damaged = found(Painted.plain(300, 300, (x, y) -> nick.applyAsDouble(x, y) > 0 || hole.applyAsDouble(x, y) > 0
                ? -1 : flan.applyAsDouble(x, y), SILVER, WHITE)).outlines().get(0);
        assertEquals(0, whole.holes().size());
        assertEquals(1, damaged.holes().size());
        assertEquals(Math.PI * 81, damaged.holes().get(0).area(), 0.03 * Math.PI * 81);
        assertTrue(damaged.edge().area() < whole.edge().area() - 150);
    }

    @Test
    void obverseAndReverseSideBySideAreTwo() {
        DoubleBinaryOperator left = Painted.ellipse(new Point(120, 130), 90, 84, 10);
        DoubleBinaryOperator right = Painted.ellipse(new Point(330, 128), 90, 84, -10);
        Found found = found(Painted.plain(460, 260, (x, y) -> Math.max(left.applyAsDouble(x, y), right.applyAsDouble(x, y)), SILVER, WHITE));
        assertEquals(2, found.outlines().size());
        assertEquals(120, found.outlines().get(0).centroid().x(), 0.1);
        assertEquals(330, found.outlines().get(1).centroid().x(), 0.1);
    }

    /** Straight and thin, of the very shade of the ground, and long enough to count: it is no hole, and no fault either. */
    @ParameterizedTest
    @CsvSource({"1, 90", "90, 1", "1.6, 80"})
    void aScratchOfTheGroundsShadeIsNoHole(double wide, double high) {
        DoubleBinaryOperator flan = Painted.ellipse(new Point(150, 150), 110, 108, 0);
        Found found = found(Painted.plain(300, 300, (x, y) -> Math.abs(x - 160) < wide / 2 && Math.abs(y - 140) < high / 2
                ? -1 : flan.applyAsDouble(x, y), SILVER, WHITE));
        assertEquals(List.of(), found.outlines().get(0).holes());
    }

    /** Two sides that touch or overlap a little are no coin twice as long, whether side by side or one above the other. */
    @ParameterizedTest
    @CsvSource({"300, 130", "297, 130", "290, 130", "120, 303", "120, 296", "250, 250"})
    void sidesThatTouchAreRefused(double x, double y) {
        DoubleBinaryOperator one = Painted.ellipse(new Point(120, 130), 90, 90, 0);
        DoubleBinaryOperator other = Painted.ellipse(new Point(x, y), 88, 88, 0);
        assertRefused(Reason.TOUCHING, Painted.plain(460, 460, (u, v) -> Math.max(one.applyAsDouble(u, v), other.applyAsDouble(u, v)), SILVER, WHITE));
    }

    @Test
    void coinThatItsScaleBarTouchesIsRefused() {
        Raster picture = Painted.withBar(Painted.ellipse(new Point(150, 150), 90, 90, 0), 400, 300, SILVER, WHITE, new Point(150, 235));
        assertRefused(Reason.BAR_TOUCHING, picture);
        assertEquals(1, found(Painted.withBar(Painted.ellipse(new Point(150, 150), 90, 90, 0), 400, 300, SILVER, WHITE, new Point(150, 250)))
                .outlines().size());
    }

    /**
     * A brown coin under a lamp: its shadow, a quarter as light as the ground, reaches some pixels beyond it to one
     * side and runs out softly. The shadow’s edge is not the coin’s.
     */
    @ParameterizedTest(name = "ground {0} {1} {2}")
    @CsvSource({"0.8, 0.8, 0.8", "0.55, 0.45, 0.3", "0.2, 0.02, 0.02", "0.02, 0.06, 0.03", "0.1, 0.12, 0.3"})
    void softShadowIsNoCoin(double red, double green, double blue) {
        Found found = found(Painted.shaded(new Point(150, 150), 100, new double[] {0.35, 0.25, 0.12}, new double[] {red, green, blue}));
        assertEquals(200, found.outlines().get(0).greatest().length(), 2);
        assertEquals(200, found.outlines().get(0).least().length(), 2);
    }

    @Test
    void coinCutByTheFrameIsRefused() {
        assertRefused(Reason.CUT_BY_FRAME, Painted.plain(300, 300, Painted.ellipse(new Point(230, 150), 90, 90, 0), SILVER, WHITE));
    }

    @Test
    void emptyPictureIsRefused() {
        assertRefused(Reason.NO_CONTRAST, Painted.plain(300, 300, (x, y) -> -1, SILVER, WHITE));
    }

    @Test
    void coinLikeItsGroundIsRefused() {
        assertRefused(Reason.NO_CONTRAST, Painted.plain(300, 300, Painted.ellipse(new Point(150, 150), 90, 90, 0),
                new double[] {0.93, 0.93, 0.93}, WHITE));
    }

    @Test
    void threeCoinsAreRefused() {
        DoubleBinaryOperator three = (x, y) -> Math.max(Painted.ellipse(new Point(80, 80), 50, 50, 0).applyAsDouble(x, y), Math.max(
                Painted.ellipse(new Point(220, 80), 50, 50, 0).applyAsDouble(x, y),
                Painted.ellipse(new Point(150, 220), 50, 50, 0).applyAsDouble(x, y)));
        assertRefused(Reason.SEVERAL_OBJECTS, Painted.plain(300, 300, three, SILVER, WHITE));
    }

    @Test
    void chequeredGroundIsRefused() {
        assertRefused(Reason.GROUND_NOT_PLAIN, Painted.plain(300, 300,
                (x, y) -> (Math.floor(x / 25) + Math.floor(y / 25)) % 2 == 0 ? 1 : -1, SILVER, WHITE));
    }

    @Test
    void stampSizedPictureIsRefused() {
        assertRefused(Reason.TOO_SMALL, Painted.plain(30, 30, Painted.ellipse(new Point(15, 15), 9, 9, 0), SILVER, WHITE));
    }

    private static Found found(Raster raster) {
        return assertInstanceOf(Found.class, Outliner.find(raster));
    }

    private static void assertRefused(Reason reason, Raster raster) {
        assertEquals(new Refused(reason), Outliner.find(raster));
    }
}
