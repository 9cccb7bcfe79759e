package exergue.photo;

import java.util.ArrayList;
import java.util.List;

/** A closed line through at least three places; the last is joined to the first. */
public record Ring(List<Point> points) {

    public Ring {
        points = List.copyOf(points);
        if (points.size() < 3) {
            throw new IllegalArgumentException("a ring of " + points.size() + " places");
        }
    }

    public int size() {
        return points.size();
    }

    /** Counted round: one after the last is the first. */
    Point at(int index) {
        return points.get(Math.floorMod(index, points.size()));
    }

    /** Of the polygon, whichever way round it runs, by the shoelace formula. */
    public double area() {
        return Math.abs(signedArea());
    }

    /** Above nought where it runs clockwise as seen on the picture. */
    double signedArea() {
        double twice = 0;
        for (int i = 0; i < size(); i++) {
            twice += cross(at(i), at(i + 1));
        }
        return twice / 2;
    }

    private static double cross(Point one, Point other) {
        return one.x() * other.y() - other.x() * one.y();
    }

    /** Centre of gravity of the polygon. */
    public Point centroid() {
        Point base = at(0); // near the polygon, so that nothing is lost far from the origin
        double x = 0;
        double y = 0;
        double twice = 0;
        for (int i = 0; i < size(); i++) {
            Point one = new Point(at(i).x() - base.x(), at(i).y() - base.y());
            Point next = new Point(at(i + 1).x() - base.x(), at(i + 1).y() - base.y());
            double part = cross(one, next);
            twice += part;
            x += (one.x() + next.x()) * part;
            y += (one.y() + next.y()) * part;
        }
        return twice == 0 ? base : new Point(base.x() + x / (3 * twice), base.y() + y / (3 * twice));
    }

    public double perimeter() {
        double length = 0;
        for (int i = 0; i < size(); i++) {
            length += at(i).distance(at(i + 1));
        }
        return length;
    }

    public double left() {
        return points.stream().mapToDouble(Point::x).min().orElseThrow();
    }

    public double right() {
        return points.stream().mapToDouble(Point::x).max().orElseThrow();
    }

    public double top() {
        return points.stream().mapToDouble(Point::y).min().orElseThrow();
    }

    public double bottom() {
        return points.stream().mapToDouble(Point::y).max().orElseThrow();
    }

    /** The same polygon with every place at {@code factor} times its distance from the origin. */
    Ring times(double factor) {
        return new Ring(points.stream().map(p -> new Point(p.x() * factor, p.y() * factor)).toList());
    }

    Ring moved(double x, double y) {
        return new Ring(points.stream().map(p -> new Point(p.x() + x, p.y() + y)).toList());
    }

    /** Left and right exchanged, about the line x = 0. */
    Ring mirrored() {
        List<Point> other = new ArrayList<>(points.stream().map(p -> new Point(-p.x(), p.y())).toList());
        java.util.Collections.reverse(other);
        return new Ring(other);
    }

    /** Turned clockwise about the origin. */
    Ring turned(double degrees) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        return new Ring(points.stream().map(p -> new Point(p.x() * cos - p.y() * sin, p.x() * sin + p.y() * cos)).toList());
    }

    /** Whether the place lies inside: a line from there to the right crosses the ring an odd number of times. */
    public boolean contains(Point place) {
        boolean inside = false;
        for (int i = 0; i < size(); i++) {
            Point one = at(i);
            Point next = at(i + 1);
            if (one.y() > place.y() != next.y() > place.y()
                    && place.x() < one.x() + (place.y() - one.y()) / (next.y() - one.y()) * (next.x() - one.x())) {
                inside = !inside;
            }
        }
        return inside;
    }
}
