package exergue.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The greatest diameter of places is the longest of all distances between two of them. */
class HullTest {

    private static double longest(List<Point> places) {
        return places.stream().flatMapToDouble(one -> places.stream().mapToDouble(one::distance)).max().orElseThrow();
    }

    @Property
    void ofPlacesAnywhere(@ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int places) {
        Random random = new Random(seed);
        List<Point> all = new ArrayList<>();
        for (int i = 0; i < places; i++) {
            all.add(new Point(random.nextDouble() * 100, random.nextDouble() * 40));
        }
        assertEquals(longest(all), Hull.of(all).greatest().length(), 1e-9);
    }

    /** Many lie on one line, and many sides are parallel. */
    @Property
    void ofCornersOfSquaredPaper(@ForAll long seed, @ForAll @IntRange(min = 1, max = 30) int places) {
        Random random = new Random(seed);
        List<Point> all = new ArrayList<>();
        for (int i = 0; i < places; i++) {
            all.add(new Point(random.nextInt(6), random.nextInt(5)));
        }
        assertEquals(longest(all), Hull.of(all).greatest().length(), 1e-12);
    }

    /** Euclid: the longest diagonal of a regular polygon is the diameter of its circle, or that times the cosine of half a half step. */
    @ParameterizedTest
    @ValueSource(ints = {3, 4, 5, 6, 7, 8, 100, 101, 3000, 3001})
    void ofRegularPolygons(int corners) {
        List<Point> polygon = IntStream.range(0, corners)
                .mapToObj(i -> new Point(10 * Math.cos(2 * Math.PI * i / corners), 10 * Math.sin(2 * Math.PI * i / corners))).toList();
        assertEquals(20 * (corners % 2 == 0 ? 1 : Math.cos(Math.PI / (2 * corners))), Hull.of(polygon).greatest().length(), 1e-9);
    }

    @Test
    void ofOnePlaceAndOfTwo() {
        assertEquals(0, Hull.of(List.of(new Point(3, 4))).greatest().length());
        assertEquals(5, Hull.of(List.of(new Point(0, 0), new Point(3, 4))).greatest().length());
        assertEquals(10, Hull.of(List.of(new Point(0, 0), new Point(3, 4), new Point(6, 8))).greatest().length());
    }
}
