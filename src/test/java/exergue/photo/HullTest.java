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

/**
 * The greatest diameter of places is the longest of all distances between two of them; the least is the narrowest slot they go
 * through, which lies along a side of the hull. Both are looked for here the long way, over all pairs.
 */
class HullTest {

    private static double longest(List<Point> places) {
        return places.stream().flatMapToDouble(one -> places.stream().mapToDouble(one::distance)).max().orElseThrow();
    }

    /** Of every strip that has a side of the hull for its edge, the narrowest that holds all places. */
    private static double narrowest(List<Point> places) {
        List<Point> corners = Hull.of(places).corners();
        double narrowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < corners.size(); i++) {
            Point one = corners.get(i);
            Point next = corners.get((i + 1) % corners.size());
            narrowest = Math.min(narrowest, places.stream().mapToDouble(far -> Math.abs((next.x() - one.x()) * (far.y() - one.y())
                    - (next.y() - one.y()) * (far.x() - one.x())) / one.distance(next)).max().orElseThrow());
        }
        return narrowest;
    }

    @Property
    void ofPlacesAnywhere(@ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int places) {
        Random random = new Random(seed);
        List<Point> all = new ArrayList<>();
        for (int i = 0; i < places; i++) {
            all.add(new Point(random.nextDouble() * 100, random.nextDouble() * 40));
        }
        assertEquals(longest(all), Hull.of(all).greatest().length(), 1e-9);
        if (places > 1) {
            assertEquals(narrowest(all), Hull.of(all).least().length(), 1e-9);
        }
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
        if (all.stream().distinct().count() > 1) {
            assertEquals(narrowest(all), Hull.of(all).least().length(), 1e-9);
        }
    }

    /** Euclid: the longest diagonal of a regular polygon is the diameter of its circle, or that times the cosine of half a half step; the
     * narrowest slot is twice the inner circle's radius, or that and the outer one's. */
    @ParameterizedTest
    @ValueSource(ints = {3, 4, 5, 6, 7, 8, 100, 101, 3000, 3001})
    void ofRegularPolygons(int corners) {
        List<Point> polygon = IntStream.range(0, corners)
                .mapToObj(i -> new Point(10 * Math.cos(2 * Math.PI * i / corners), 10 * Math.sin(2 * Math.PI * i / corners))).toList();
        assertEquals(20 * (corners % 2 == 0 ? 1 : Math.cos(Math.PI / (2 * corners))), Hull.of(polygon).greatest().length(), 1e-9);
        double inner = 10 * Math.cos(Math.PI / corners);
        assertEquals(corners % 2 == 0 ? 2 * inner : 10 + inner, Hull.of(polygon).least().length(), 1e-9);
    }

    @Test
    void ofOnePlaceAndOfTwo() {
        assertEquals(0, Hull.of(List.of(new Point(3, 4))).greatest().length());
        assertEquals(5, Hull.of(List.of(new Point(0, 0), new Point(3, 4))).greatest().length());
        assertEquals(10, Hull.of(List.of(new Point(0, 0), new Point(3, 4), new Point(6, 8))).greatest().length());
    }
}
