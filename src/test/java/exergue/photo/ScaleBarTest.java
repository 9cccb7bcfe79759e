package exergue.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.photo.ScaleBarRead.NotRead;
import exergue.photo.ScaleBarRead.Read;
import exergue.photo.ScaleBarRead.Reason;
import java.util.function.DoubleBinaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bars drawn with a known scale. */
class ScaleBarTest {

    private static final double[] BLACK = {0.03, 0.03, 0.03};
    private static final double[] WHITE = {0.95, 0.95, 0.95};
    private static final double[] SILVER = {0.4, 0.4, 0.4};

    @ParameterizedTest
    @CsvSource({"12.7, 10, 0, 9", "7.3, 20, 0, 19", "20, 5, 0, 5", "9.25, 10, 90, 9", "15.5, 10, 3, 9", "11, 15, 88, 15", "14, 9, 41, 9"})
    void blackDivisionsOnWhite(double pixels, int divisions, double degrees, int seen) {
        Read read = read(Painted.plain(400, 400, bar(new Point(200, 200), pixels, divisions, degrees), BLACK, WHITE));
        assertEquals(pixels, read.pixelsPerMm(), 0.003 * pixels);
        assertEquals(seen, read.divisions());
        assertTrue(read.uneven() < 0.02);
    }

    @Test
    void whiteDivisionsOnBlack() {
        Read read = read(Painted.plain(400, 300, bar(new Point(200, 250), 13.1, 11, 0), WHITE, BLACK));
        assertEquals(13.1, read.pixelsPerMm(), 0.04);
        assertEquals(11, read.divisions());
    }

    /** With a line about it all divisions hang together in black, and the white ones are the blocks. */
    @Test
    void outlinedBar() {
        DoubleBinaryOperator divisions = bar(new Point(200, 200), 16, 10, 0);
        DoubleBinaryOperator frame = (x, y) -> Math.abs(x - 200) < 82 && Math.abs(y - 200) < 14
                && (Math.abs(x - 200) > 80 || Math.abs(y - 200) > 12) ? 1 : -1;
        Read read = read(Painted.plain(400, 400, (x, y) -> Math.max(divisions.applyAsDouble(x, y), frame.applyAsDouble(x, y)), BLACK, WHITE));
        assertEquals(16, read.pixelsPerMm(), 0.1);
        assertTrue(read.divisions() >= 8);
    }

    @Property(tries = 15)
    void besideACoinInAnyDirection(@ForAll @DoubleRange(min = 8, max = 16) double pixels, @ForAll @DoubleRange(min = -12, max = 12) double degrees) {
        DoubleBinaryOperator coin = Painted.ellipse(new Point(180, 150), 100, 96, 0);
        DoubleBinaryOperator bar = bar(new Point(180, 310), pixels, 10, degrees);
        float[] samples = new float[360 * 360 * 3];
        Raster coins = Painted.plain(360, 360, coin, SILVER, WHITE);
        Raster bars = Painted.plain(360, 360, bar, BLACK, WHITE);
        for (int i = 0; i < samples.length; i++) {
            int at = i / 3;
            samples[i] = Math.min(coins.at(at % 360, at / 360, i % 3), bars.at(at % 360, at / 360, i % 3));
        }
        Read read = read(Raster.rgb(360, 360, samples));
        assertEquals(pixels, read.pixelsPerMm(), 0.006 * pixels);
        assertEquals(1, ((Outlined.Found) Outliner.find(Raster.rgb(360, 360, samples))).outlines().size());
    }

    @Test
    void noBarIsNotRead() {
        assertEquals(new NotRead(Reason.NONE), ScaleBar.find(Painted.plain(300, 300, Painted.ellipse(new Point(150, 150), 90, 90, 0), SILVER, WHITE)));
    }

    /** Photographed aslant, the far divisions are shorter. */
    @Test
    void barAslantIsRefused() {
        DoubleBinaryOperator bar = (x, y) -> {
            double mm = Math.log(Math.max(1, x - 40) / 20) * 9;
            return mm > 0 && mm < 13 && Math.abs(y - 200) < 12 && (int) mm % 2 == 0 ? 1 : -1;
        };
        assertInstanceOf(NotRead.class, ScaleBar.find(Painted.plain(400, 400, bar, BLACK, WHITE)));
    }

    @Test
    void rowOfDotsIsNoBar() {
        DoubleBinaryOperator dots = (x, y) -> {
            double across = (x % 30) - 15;
            return x > 60 && x < 330 ? 49 - across * across - (y - 200) * (y - 200) : -1;
        };
        assertEquals(new NotRead(Reason.NONE), ScaleBar.find(Painted.plain(400, 400, dots, BLACK, WHITE)));
    }

    @Test
    void twoBlocksAreNoBar() {
        assertEquals(new NotRead(Reason.NONE), ScaleBar.find(Painted.plain(400, 400, bar(new Point(200, 200), 20, 3, 0), BLACK, WHITE)));
    }

    /** The first, third … division, each one millimetre of so many pixels. */
    private static DoubleBinaryOperator bar(Point middle, double pixels, int divisions, double degrees) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        return (x, y) -> {
            double along = ((x - middle.x()) * cos + (y - middle.y()) * sin) / pixels + divisions / 2.0;
            double aside = (-(x - middle.x()) * sin + (y - middle.y()) * cos) / pixels;
            return along > 0 && along < divisions && Math.abs(aside) < 0.75 && (int) along % 2 == 0 ? 1 : -1;
        };
    }

    private static Read read(Raster raster) {
        return assertInstanceOf(Read.class, ScaleBar.find(raster));
    }
}
