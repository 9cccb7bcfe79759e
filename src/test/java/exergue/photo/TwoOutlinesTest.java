package exergue.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import exergue.measure.Axis;
import exergue.photo.AxisFromOutlines.Angle;
import exergue.photo.AxisFromOutlines.CannotTell;
import exergue.photo.AxisFromOutlines.Reason;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The coins of these tests are things in space: a flan whose edge is known, and on either side of it an arrow that stands
 * for the design. What is photographed follows from turning the thing, and not from any formula of an axis.
 */
class TwoOutlinesTest {

    /** Seen from in front, x to the right, y down, z towards the one who looks. */
    private record Spot(double x, double y, double z) {
        /** Turned about the vertical by half a turn: what was in front is behind, what was left is right. */
        Spot turnedAboutTheVertical() {
            return new Spot(-x, y, -z);
        }

        Spot turnedClockwise(double degrees) {
            double cos = Math.cos(Math.toRadians(degrees));
            double sin = Math.sin(Math.toRadians(degrees));
            return new Spot(x * cos - y * sin, x * sin + y * cos, z);
        }
    }

    /** @param obverseUp tip of the obverse’s arrow, in front; @param reverseUp tip of the reverse’s, behind */
    private record Thing(List<Spot> edge, Spot obverseUp, Spot reverseUp) {

        /**
         * As it comes from under the hammer. The obverse stands upright. Of the reverse it is known which way its arrow
         * points when the coin has been turned about its vertical: so it is drawn then, and the coin turned back.
         */
        static Thing struck(Outline flan, double hours) {
            List<Spot> edge = flan.edge().points().stream().map(p -> new Spot(p.x(), p.y(), 0)).toList();
            Spot asSeenFromBehind = new Spot(0, -1, 1).turnedClockwise(hours * 30);
            return new Thing(edge, new Spot(0, -1, 1), asSeenFromBehind.turnedAboutTheVertical());
        }

        Thing turnedOver() {
            return new Thing(edge.stream().map(Spot::turnedAboutTheVertical).toList(), obverseUp.turnedAboutTheVertical(),
                    reverseUp.turnedAboutTheVertical());
        }

        /** Laid before the camera so that this arrow, which must be in front, points straight up. */
        Outline photographed(Spot arrow) {
            assertEquals(1, arrow.z());
            double leans = Math.toDegrees(Math.atan2(arrow.x(), -arrow.y()));
            return new Outline(new Ring(edge.stream().map(spot -> spot.turnedClockwise(-leans))
                    .map(spot -> new Point(spot.x(), spot.y())).toList()), List.of());
        }

        Outline obverse() {
            return photographed(obverseUp);
        }

        Outline reverse() {
            Thing over = turnedOver();
            return over.photographed(over.reverseUp());
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {12, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 0.5, 5.5, 6.25})
    void hourOfTheCoinIsRead(double hours) {
        Thing coin = Thing.struck(uneven(3), hours);
        Angle angle = assertInstanceOf(Angle.class, TwoOutlines.axis(coin.obverse(), coin.reverse()));
        assertEquals(0, apart(angle.degrees(), hours * 30), 0.2);
    }

    /** The axis is the same whichever side is taken first: common practice, no source. */
    @ParameterizedTest
    @ValueSource(doubles = {12, 1, 3, 5, 6, 7, 8.5})
    void sameFromWhicheverSide(double hours) {
        Thing coin = Thing.struck(uneven(5), hours);
        Angle one = assertInstanceOf(Angle.class, TwoOutlines.axis(coin.obverse(), coin.reverse()));
        Angle other = assertInstanceOf(Angle.class, TwoOutlines.axis(coin.reverse(), coin.obverse()));
        assertEquals(0, apart(one.degrees(), other.degrees()), 0.2);
        assertEquals(0, apart(other.degrees(), hours * 30), 0.2);
    }

    /** What the program that reads axes means by an hour is what this one means. */
    @ParameterizedTest
    @ValueSource(ints = {1, 4, 5, 7, 11})
    void agreesWithAxesOfReadings(int hours) {
        Thing coin = Thing.struck(uneven(4), hours);
        Spot reverseArrow = coin.turnedOver().reverseUp();
        double seen = Math.toDegrees(Math.atan2(reverseArrow.x(), -reverseArrow.y())) / 30;
        assertEquals(0, Axis.difference(Axis.between(BigDecimal.ZERO, BigDecimal.valueOf(seen)), BigDecimal.valueOf(hours)).doubleValue(), 1e-9);
        Angle angle = assertInstanceOf(Angle.class, TwoOutlines.axis(coin.obverse(), coin.reverse()));
        assertEquals(hours, angle.hour());
    }

    @Property(tries = 80)
    void sizeAndPlaceOnThePictureDoNotMatter(@ForAll @IntRange(min = 1, max = 60) int flan,
            @ForAll @DoubleRange(min = 0, max = 359) double degrees, @ForAll @DoubleRange(min = 0.3, max = 4) double larger) {
        Thing coin = Thing.struck(uneven(flan), degrees / 30);
        AxisFromOutlines axis = TwoOutlines.axis(coin.obverse().moved(300, 40), coin.reverse().times(larger).moved(-20, 999));
        assertEquals(0, apart(assertInstanceOf(Angle.class, axis).degrees(), degrees), 0.3);
    }

    @Test
    void roundFlanTellsNothing() {
        Thing coin = Thing.struck(polar(turn -> 100), 5);
        assertEquals(new CannotTell(Reason.TOO_ROUND), TwoOutlines.axis(coin.obverse(), coin.reverse()));
    }

    @Test
    void ellipseFitsTwice() {
        Thing coin = Thing.struck(polar(turn -> 100 / Math.hypot(Math.cos(turn), 1.2 * Math.sin(turn))), 5);
        assertEquals(new CannotTell(Reason.FITS_TWICE), TwoOutlines.axis(coin.obverse(), coin.reverse()));
    }

    @Test
    void otherCoinsReverseDoesNotFit() {
        assertInstanceOf(CannotTell.class, TwoOutlines.axis(Thing.struck(uneven(3), 5).obverse(), Thing.struck(uneven(8), 5).reverse()));
    }

    /** A reverse printed the wrong way round, as negatives are, is no mirror image of the obverse. */
    @Test
    void pictureWrongWayRoundDoesNotFit() {
        Thing coin = Thing.struck(uneven(3), 5);
        assertInstanceOf(CannotTell.class, TwoOutlines.axis(coin.obverse(), coin.reverse().mirrored()));
    }

    private static Outline uneven(int seed) {
        return polar(turn -> {
            double radius = 100;
            for (int wave = 2; wave < 9; wave++) {
                radius += 4.0 / wave * Math.sin(wave * turn + seed * wave * wave * 0.77);
            }
            return radius;
        });
    }

    private static Outline polar(java.util.function.DoubleUnaryOperator radius) {
        return new Outline(new Ring(IntStream.range(0, 720).mapToObj(i -> {
            double turn = 2 * Math.PI * i / 720;
            return new Point(radius.applyAsDouble(turn) * Math.sin(turn), -radius.applyAsDouble(turn) * Math.cos(turn));
        }).toList()), List.of());
    }

    private static double apart(double degrees, double other) {
        double apart = Math.abs(degrees - other) % 360;
        return Math.min(apart, 360 - apart);
    }
}
