package exergue.demo;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/**
 * The true edge of a coin as a polygon in millimetres, x to the right, y downwards, with its holes. What is measured
 * here is measured on the polygon's corners, and owes nothing to the code that measures photographs.
 */
record Flan(List<Corner> edge, List<List<Corner>> holes) {

    record Corner(double x, double y) { }

    Flan {
        edge = List.copyOf(edge);
        holes = holes.stream().map(List::copyOf).toList();
    }

    /**
     * The same flan as the reverse shows it, upright: turned over about the vertical, then back by the die-axis.
     *
     * @param axis in degrees clockwise, from the top of the obverse to the top of the reverse
     */
    Flan turnedOver(double axis) {
        AffineTransform over = AffineTransform.getRotateInstance(Math.toRadians(-axis));
        over.scale(-1, 1);
        return moved(over);
    }

    Flan moved(AffineTransform how) {
        return new Flan(moved(edge, how), holes.stream().map(hole -> moved(hole, how)).toList());
    }

    Flan scaled(double times) {
        return moved(AffineTransform.getScaleInstance(times, times));
    }

    Flan pierced(List<Corner> hole) {
        List<List<Corner>> all = new ArrayList<>(holes);
        all.add(hole);
        return new Flan(edge, all);
    }

    private static List<Corner> moved(List<Corner> corners, AffineTransform how) {
        double[] spot = new double[2];
        return corners.stream().map(corner -> {
            how.transform(new double[] {corner.x, corner.y}, 0, spot, 0, 1);
            return new Corner(spot[0], spot[1]);
        }).toList();
    }

    /** How far the flan reaches along a direction, in mm: 0 degrees is across, 90 from top to bottom. */
    double extent(double degrees) {
        return extent(edge.toArray(Corner[]::new), degrees);
    }

    private static double extent(Corner[] corners, double degrees) {
        double across = Math.cos(Math.toRadians(degrees));
        double down = Math.sin(Math.toRadians(degrees));
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Corner corner : corners) {
            double along = corner.x * across + corner.y * down;
            least = Math.min(least, along);
            most = Math.max(most, along);
        }
        return most - least;
    }

    double vertical() {
        return extent(90);
    }

    double horizontal() {
        return extent(0);
    }

    /** Between the two corners that lie farthest apart. */
    double greatest() {
        Corner[] corners = edge.toArray(Corner[]::new);
        double most = 0;
        for (Corner one : corners) {
            for (Corner other : corners) {
                most = Math.max(most, (one.x - other.x) * (one.x - other.x) + (one.y - other.y) * (one.y - other.y));
            }
        }
        return Math.sqrt(most);
    }

    /** Between the jaws of callipers where they are least apart, to a quarter of a degree. */
    double least() {
        Corner[] corners = edge.toArray(Corner[]::new);
        double least = Double.POSITIVE_INFINITY;
        for (int quarter = 0; quarter < 720; quarter++) {
            least = Math.min(least, extent(corners, quarter / 4.0));
        }
        return least;
    }

    /** In square millimetres, without the holes. */
    double area() {
        return area(edge) - holes.stream().mapToDouble(Flan::area).sum();
    }

    private static double area(List<Corner> corners) {
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            Corner one = corners.get(i);
            Corner next = corners.get((i + 1) % corners.size());
            twice += one.x * next.y - next.x * one.y;
        }
        return Math.abs(twice) / 2;
    }

    /** Edge and holes, filled by the even-odd rule. */
    Path2D shape() {
        Path2D shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        add(shape, edge);
        holes.forEach(hole -> add(shape, hole));
        return shape;
    }

    private static void add(Path2D shape, List<Corner> corners) {
        shape.moveTo(corners.get(0).x, corners.get(0).y);
        corners.subList(1, corners.size()).forEach(corner -> shape.lineTo(corner.x, corner.y));
        shape.closePath();
    }

    /** With the middle of its bounds at 0, 0. */
    Flan centred() {
        double left = edge.stream().mapToDouble(Corner::x).min().orElse(0);
        double top = edge.stream().mapToDouble(Corner::y).min().orElse(0);
        return moved(AffineTransform.getTranslateInstance(-left - horizontal() / 2, -top - vertical() / 2));
    }
}
