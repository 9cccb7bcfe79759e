package exergue.photo;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Lines along which a plane has one value, by marching squares: between the middles of four pixels the line runs straight
 * from side to side, each crossing interpolated.
 */
final class Contour {

    private final Plane plane;
    private final double level;
    private final Map<Long, Long> next = new HashMap<>();
    private final List<Long> starts = new ArrayList<>();

    private Contour(Plane plane, double level) {
        this.plane = plane;
        this.level = level;
    }

    /** Every closed line, with what is above the level to its left as it runs; longest first. Beyond the frame all is 0. */
    static List<Ring> of(Plane plane, double level) {
        Contour contour = new Contour(plane, level);
        for (int y = -1; y < plane.height(); y++) {
            for (int x = -1; x < plane.width(); x++) {
                contour.square(x, y);
            }
        }
        return contour.rings();
    }

    private double value(int x, int y) {
        return x < 0 || y < 0 || x >= plane.width() || y >= plane.height() ? 0 : plane.at(x, y);
    }

    /** Joins the crossings on the sides of the square whose corners are the middles of four pixels. */
    private void square(int x, int y) {
        boolean nw = value(x, y) > level;
        boolean ne = value(x + 1, y) > level;
        boolean se = value(x + 1, y + 1) > level;
        boolean sw = value(x, y + 1) > level;
        int shape = (nw ? 8 : 0) | (ne ? 4 : 0) | (se ? 2 : 0) | (sw ? 1 : 0);
        if (shape == 0 || shape == 15) {
            return;
        }
        long top = side(x, y, 0);
        long left = side(x, y, 1);
        long bottom = side(x, y + 1, 0);
        long right = side(x + 1, y, 1);
        switch (shape) {
            case 1 -> join(bottom, left);
            case 2 -> join(right, bottom);
            case 3 -> join(right, left);
            case 4 -> join(top, right);
            case 5 -> joinTwo(top, right, bottom, left);
            case 6 -> join(top, bottom);
            case 7 -> join(top, left);
            case 8 -> join(left, top);
            case 9 -> join(bottom, top);
            case 10 -> joinTwo(left, top, right, bottom);
            case 11 -> join(right, top);
            case 12 -> join(left, right);
            case 13 -> join(bottom, right);
            default -> join(left, bottom);
        }
    }

    private void joinTwo(long from, long to, long otherFrom, long otherTo) {
        join(from, to);
        join(otherFrom, otherTo);
    }

    private void join(long from, long to) {
        next.put(from, to);
        starts.add(from);
    }

    /** Name of one side of a square: it begins at the middle of pixel x, y and runs right (0) or down (1). */
    private long side(int x, int y, int way) {
        return (((long) (y + 1) * (plane.width() + 2)) + x + 1) * 2 + way;
    }

    private Point crossing(long side) {
        int way = (int) (side % 2);
        long at = side / 2;
        int x = (int) (at % (plane.width() + 2)) - 1;
        int y = (int) (at / (plane.width() + 2)) - 1;
        double from = value(x, y);
        double to = way == 0 ? value(x + 1, y) : value(x, y + 1);
        double part = (level - from) / (to - from);
        return way == 0 ? new Point(x + 0.5 + part, y + 0.5) : new Point(x + 0.5, y + 0.5 + part);
    }

    private List<Ring> rings() {
        List<Ring> rings = new ArrayList<>();
        for (long start : starts) {
            List<Point> points = new ArrayList<>();
            Long at = start;
            while (at != null && next.containsKey(at)) {
                points.add(crossing(at));
                at = next.remove(at);
            }
            if (points.size() >= 3) {
                rings.add(new Ring(points));
            }
        }
        rings.sort((one, other) -> Integer.compare(other.size(), one.size()));
        return rings;
    }
}
