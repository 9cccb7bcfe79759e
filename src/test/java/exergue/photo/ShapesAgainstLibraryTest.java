package exergue.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Polygons that NumPy 1.24.2 and SciPy 1.10.1 measured too: {@code src/test/resources/photo/shapes.py} wrote the figures. */
class ShapesAgainstLibraryTest {

    private static final double NEAR = 1e-7;

    @ParameterizedTest
    @CsvFileSource(resources = "/photo/shapes.csv", numLinesToSkip = 1)
    void measuresAreThoseOfTheLibrary(int corners, double area, double perimeter, double hull, double greatest, double least, double x, double y) {
        Outline shape = new Outline(new Ring(IntStream.range(0, corners).mapToObj(i -> {
            double radius = 10 + 3 * Math.sin(i * 2.399) + 2 * Math.cos(i * i * 0.7);
            double turn = 2 * Math.PI * i / corners;
            return new Point(radius * Math.sin(turn), -radius * Math.cos(turn));
        }).toList()), List.of());
        assertEquals(area, shape.area(), NEAR);
        assertEquals(perimeter, shape.perimeter(), NEAR);
        assertEquals(hull, shape.hull().area(), NEAR);
        assertEquals(greatest, shape.greatest().length(), NEAR);
        assertEquals(least, shape.least().length(), NEAR);
        assertEquals(x, shape.centroid().x(), NEAR);
        assertEquals(y, shape.centroid().y(), NEAR);
    }
}
