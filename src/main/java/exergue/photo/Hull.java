package exergue.photo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The convex hull of places, as a rubber band round them, and what callipers measure on it. */
final class Hull {

    private final List<Point> corners;

    private Hull(List<Point> corners) {
        this.corners = corners;
    }

    /** By Andrew's monotone chain; places on a straight line between two others are left out. */
    static Hull of(List<Point> places) {
        List<Point> sorted = places.stream().distinct()
                .sorted(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y)).toList();
        if (sorted.size() < 3) {
            return new Hull(sorted);
        }
        List<Point> all = chain(sorted);
        List<Point> reversed = new ArrayList<>(sorted);
        java.util.Collections.reverse(reversed);
        all.addAll(chain(reversed));
        return new Hull(List.copyOf(all));
    }

    /** One half of the hull without its last place. */
    private static List<Point> chain(List<Point> sorted) {
        List<Point> chain = new ArrayList<>();
        for (Point next : sorted) {
            while (chain.size() > 1 && turn(chain.get(chain.size() - 2), chain.get(chain.size() - 1), next) <= 0) {
                chain.remove(chain.size() - 1);
            }
            chain.add(next);
        }
        chain.remove(chain.size() - 1);
        return chain;
    }

    private static double turn(Point one, Point two, Point three) {
        return (two.x() - one.x()) * (three.y() - one.y()) - (two.y() - one.y()) * (three.x() - one.x());
    }

    List<Point> corners() {
        return corners;
    }

    /** The two corners that lie farthest apart. Only opposite ones can be. */
    Caliper greatest() {
        Caliper widest = Caliper.between(corners.get(0), corners.get(corners.size() / 2));
        int[] far = opposite();
        for (int i = 0; i < far.length; i++) {
            for (Point opposite : List.of(corner(far[i]), corner(far[i] + 1))) { // both, for a side that is parallel to this one
                widest = wider(wider(widest, corner(i), opposite), corner(i + 1), opposite);
            }
        }
        return widest;
    }

    /**
     * For each side of the hull the number of the corner farthest from it. They are met by going round once with two parallel
     * jaws (Shamos's rotating callipers): the corner opposite a side never lies before that opposite the last.
     */
    private int[] opposite() {
        int[] opposite = new int[corners.size()];
        int far = 1;
        for (int i = 0; i < opposite.length; i++) {
            for (int steps = 0; steps < opposite.length
                    && turn(corner(i), corner(i + 1), corner(far + 1)) > turn(corner(i), corner(i + 1), corner(far)); steps++) {
                far++;
            }
            opposite[i] = far;
        }
        return opposite;
    }

    private Point corner(int number) {
        return corners.get(number % corners.size());
    }

    private static Caliper wider(Caliper widest, Point one, Point other) {
        return one.distance(other) > widest.length() ? Caliper.between(one, other) : widest;
    }

    /** The least width always lies square to one side of the hull. */
    Caliper least() {
        Caliper narrowest = null;
        int[] far = opposite();
        for (int i = 0; i < far.length; i++) {
            Caliper width = width(corner(i), corner(i + 1), corner(far[i]));
            narrowest = narrowest == null || width.length() < narrowest.length() ? width : narrowest;
        }
        return narrowest;
    }

    /** Longer and shorter side of the smallest rectangle that holds all; one of its sides lies along one of the hull. */
    double[] sides() {
        double[] smallest = {0, 0};
        double area = Double.POSITIVE_INFINITY;
        for (int i = 0; i < corners.size(); i++) {
            Point one = corners.get(i);
            Point next = corners.get((i + 1) % corners.size());
            double side = one.distance(next);
            double along = reach((next.x() - one.x()) / side, (next.y() - one.y()) / side);
            double across = reach(-(next.y() - one.y()) / side, (next.x() - one.x()) / side);
            if (along * across < area) {
                area = along * across;
                smallest = new double[] {Math.max(along, across), Math.min(along, across)};
            }
        }
        return smallest;
    }

    private double reach(double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Point corner : corners) {
            least = Math.min(least, corner.x() * x + corner.y() * y);
            most = Math.max(most, corner.x() * x + corner.y() * y);
        }
        return most - least;
    }

    /** From the corner farthest from the side straight down to it. */
    private static Caliper width(Point one, Point next, Point far) {
        double side = one.distance(next);
        double off = turn(one, next, far) / (side * side);
        return Caliper.between(far, new Point(far.x() + off * (next.y() - one.y()), far.y() - off * (next.x() - one.x())));
    }
}
