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

    /** The two corners that lie farthest apart. */
    Caliper greatest() {
        Caliper widest = new Caliper(0, 0);
        for (int i = 0; i < corners.size(); i++) {
            for (int j = i + 1; j < corners.size(); j++) {
                if (corners.get(i).distance(corners.get(j)) > widest.length()) {
                    widest = Caliper.between(corners.get(i), corners.get(j));
                }
            }
        }
        return widest;
    }

    /** The least width always lies square to one side of the hull. */
    Caliper least() {
        Caliper narrowest = null;
        for (int i = 0; i < corners.size(); i++) {
            Point one = corners.get(i);
            Point next = corners.get((i + 1) % corners.size());
            double side = one.distance(next);
            double width = corners.stream().mapToDouble(far -> Math.abs(turn(one, next, far)) / side).max().orElse(0);
            if (narrowest == null || width < narrowest.length()) {
                narrowest = Caliper.along(-(next.y() - one.y()), next.x() - one.x(), width);
            }
        }
        return narrowest == null ? new Caliper(0, 0) : narrowest;
    }
}
