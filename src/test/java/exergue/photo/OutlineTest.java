package exergue.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Measures of polygons that elementary geometry knows. */
class OutlineTest {

    private static final double EXACT = 1e-9;

    @Test
    void rectangle() {
        Outline rectangle = Painted.outline(10, 20, 40, 20, 40, 60, 10, 60);
        assertEquals(1200, rectangle.area(), EXACT);
        assertEquals(40, rectangle.vertical(), EXACT);
        assertEquals(30, rectangle.horizontal(), EXACT);
        assertEquals(140, rectangle.perimeter(), EXACT);
        assertEquals(new Point(25, 40), rectangle.centroid());
        assertEquals(50, rectangle.greatest().length(), EXACT); // 3, 4, 5
        assertEquals(Math.toDegrees(Math.atan2(30, 40)), Math.min(rectangle.greatest().degrees(),
                180 - rectangle.greatest().degrees()), EXACT);
        assertEquals(30, rectangle.least().length(), EXACT);
        assertEquals(40, rectangle.longerSide(), EXACT);
        assertEquals(40, rectangle.turned(33).longerSide(), EXACT);
        assertEquals(90, rectangle.least().degrees(), EXACT);
    }

    @Test
    void rightTriangle() {
        Outline triangle = Painted.outline(0, 0, 3, 0, 0, 4);
        assertEquals(6, triangle.area(), EXACT);
        assertEquals(12, triangle.perimeter(), EXACT);
        assertEquals(5, triangle.greatest().length(), EXACT);
        assertEquals(2.4, triangle.least().length(), EXACT); // twice the area over the longest side
        assertEquals(1, triangle.centroid().x(), EXACT);
        assertEquals(4 / 3.0, triangle.centroid().y(), EXACT);
    }

    @Test
    void equilateralTriangle() {
        Outline triangle = Painted.outline(0, 0, 2, 0, 1, -Math.sqrt(3));
        assertEquals(Math.sqrt(3), triangle.area(), EXACT);
        assertEquals(2, triangle.greatest().length(), EXACT);
        assertEquals(Math.sqrt(3), triangle.least().length(), EXACT);
    }

    /** Circumradius 1: area 3√3/2, across corners 2, across flats √3. */
    @Test
    void hexagon() {
        Outline hexagon = regular(6);
        assertEquals(1.5 * Math.sqrt(3), hexagon.area(), EXACT);
        assertEquals(6, hexagon.perimeter(), EXACT);
        assertEquals(2, hexagon.greatest().length(), EXACT);
        assertEquals(Math.sqrt(3), hexagon.least().length(), EXACT);
    }

    @Test
    void notchChangesAreaButNotDiameters() {
        Outline whole = Painted.outline(0, 0, 10, 0, 10, 10, 0, 10);
        Outline notched = Painted.outline(0, 0, 4, 0, 5, 3, 6, 0, 10, 0, 10, 10, 0, 10);
        assertEquals(100 - 3, notched.area(), EXACT);
        assertEquals(whole.greatest().length(), notched.greatest().length(), EXACT);
        assertEquals(whole.least().length(), notched.least().length(), EXACT);
        assertEquals(100, notched.hull().area(), EXACT);
    }

    @Test
    void holeIsNoMetal() {
        Outline plain = Painted.outline(0, 0, 10, 0, 10, 10, 0, 10);
        Outline pierced = new Outline(plain.edge(), List.of(Painted.outline(2, 2, 4, 2, 4, 4, 2, 4).edge()));
        assertEquals(96, pierced.area(), EXACT);
        assertEquals(plain.meanDiameter(), pierced.meanDiameter(), EXACT);
        assertEquals(plain.roundness(), pierced.roundness(), EXACT);
    }

    /** Area of an ellipse π a b; its Feret diameters are its axes; its extent along a direction 2 √(a² cos² + b² sin²). */
    @Property(tries = 60)
    void ellipse(@ForAll @DoubleRange(min = 5, max = 50) double along, @ForAll @DoubleRange(min = 0.4, max = 0.95) double flat,
                 @ForAll @IntRange(min = 0, max = 179) int degrees) {
        double across = along * flat;
        Outline ellipse = new Outline(new Ring(IntStream.range(0, 2000).mapToObj(i -> new Point(
                across * Math.cos(i * Math.PI / 1000), along * Math.sin(i * Math.PI / 1000))).toList()), List.of()).turned(degrees);
        double turn = Math.toRadians(degrees);
        assertEquals(1, ellipse.area() / (Math.PI * along * across), 1e-5);
        assertEquals(2 * along, ellipse.greatest().length(), 2e-5 * along);
        assertEquals(2 * across, ellipse.least().length(), 2e-5 * along);
        assertEquals(0, apart(ellipse.greatest().degrees(), degrees), 0.4);
        assertEquals(0, apart(ellipse.least().degrees(), degrees + 90), 0.4);
        assertEquals(2 * Math.hypot(along * Math.cos(turn), across * Math.sin(turn)), ellipse.vertical(), 1e-4 * along);
        assertEquals(2 * Math.hypot(along * Math.sin(turn), across * Math.cos(turn)), ellipse.horizontal(), 1e-4 * along);
        assertEquals(flat, ellipse.roundness(), 1e-4);
        assertEquals(2 * along, ellipse.longerSide(), 1e-3 * along);
    }

    @Property(tries = 100)
    void turningKeepsWhatHasNoDirection(@ForAll @IntRange(min = 3, max = 40) int corners, @ForAll @DoubleRange(min = 0, max = 360) double degrees) {
        Outline shape = uneven(corners);
        Outline turned = shape.turned(degrees).moved(17, -5);
        assertEquals(shape.area(), turned.area(), 1e-6);
        assertEquals(shape.perimeter(), turned.perimeter(), 1e-6);
        assertEquals(shape.greatest().length(), turned.greatest().length(), 1e-6);
        assertEquals(shape.least().length(), turned.least().length(), 1e-6);
        assertEquals(shape.roundness(), turned.roundness(), 1e-6);
    }

    @Property(tries = 100)
    void mirroringTwiceIsNothingAndOnceTurnsDirectionsOver(@ForAll @IntRange(min = 5, max = 40) int corners) {
        Outline shape = uneven(corners);
        Outline mirrored = shape.mirrored();
        assertEquals(shape, mirrored.mirrored());
        assertEquals(shape.area(), mirrored.area(), 1e-6);
        assertEquals(shape.vertical(), mirrored.vertical(), 1e-6);
        assertEquals(0, apart(shape.greatest().degrees(), -mirrored.greatest().degrees()), 1e-6);
        assertEquals(0, apart(shape.least().degrees(), -mirrored.least().degrees()), 1e-6);
    }

    @Property(tries = 50)
    void diametersLieBetweenLeastAndGreatest(@ForAll @IntRange(min = 3, max = 40) int corners, @ForAll @DoubleRange(min = 0, max = 360) double degrees) {
        Outline shape = uneven(corners).turned(degrees);
        assertTrue(shape.least().length() <= shape.vertical() + EXACT);
        assertTrue(shape.vertical() <= shape.greatest().length() + EXACT);
        assertTrue(shape.area() <= shape.hull().area() + EXACT);
        assertTrue(shape.roundness() <= 1 + EXACT);
    }

    private static Outline regular(int corners) {
        return new Outline(new Ring(IntStream.range(0, corners).mapToObj(i -> new Point(
                Math.sin(2 * Math.PI * i / corners), -Math.cos(2 * Math.PI * i / corners))).toList()), List.of());
    }

    /** A shape of many corners like no other. */
    private static Outline uneven(int corners) {
        return new Outline(new Ring(IntStream.range(0, corners).mapToObj(i -> {
            double radius = 10 + 3 * Math.sin(i * 2.399) + 2 * Math.cos(i * i * 0.7);
            return new Point(radius * Math.sin(2 * Math.PI * i / corners), -radius * Math.cos(2 * Math.PI * i / corners));
        }).toList()), List.of());
    }

    private static double apart(double degrees, double other) {
        double apart = Math.abs(degrees - other) % 180;
        return Math.min(apart, 180 - apart);
    }
}
