package exergue.photo;

import java.util.List;

/**
 * The edge of a coin as it lies on the picture, with what is pierced through it. Lengths are in pixels until the outline
 * is taken {@link #times} something.
 *
 * @param edge  runs round the flan, nicks and cracks with it
 * @param holes that one sees the ground through
 */
public record Outline(Ring edge, List<Ring> holes) {

    public Outline {
        holes = List.copyOf(holes);
    }

    /** Of the metal: without the holes. */
    public double area() {
        return edge.area() - holes.stream().mapToDouble(Ring::area).sum();
    }

    /** Centre of gravity of the flan as if it had no holes; turns and moves with it. */
    public Point centroid() {
        return edge.centroid();
    }

    /** From the topmost to the lowest place. */
    public double vertical() {
        return edge.bottom() - edge.top();
    }

    /** From the leftmost to the rightmost place. */
    public double horizontal() {
        return edge.right() - edge.left();
    }

    /** The greatest diameter (greatest Feret diameter). */
    public Caliper greatest() {
        return Hull.of(edge.points()).greatest();
    }

    /** The least diameter (least Feret diameter): the narrowest slot the flan goes through. */
    public Caliper least() {
        return Hull.of(edge.points()).least();
    }

    /** Longer side of the smallest rectangle that holds the flan: what "18 x 17 mm" means of a square coin, and of an oval one. */
    public double longerSide() {
        return Hull.of(edge.points()).sides()[0];
    }

    public Ring hull() {
        return new Ring(Hull.of(edge.points()).corners());
    }

    /** Of the edge; grows with every roughness that the picture is sharp enough to show. */
    public double perimeter() {
        return edge.perimeter();
    }

    /** 1 for a circle, less for anything else: the area of the flan as part of the circle over its greatest diameter. */
    public double roundness() {
        double greatest = greatest().length();
        return edge.area() / (Math.PI / 4 * greatest * greatest);
    }

    /** Diameter of the circle of the same area, holes counted as metal. */
    public double meanDiameter() {
        return Math.sqrt(edge.area() * 4 / Math.PI);
    }

    /** Lengths times the factor, about the origin: pixels to millimetres, one picture's size to another's. */
    public Outline times(double factor) {
        return new Outline(edge.times(factor), holes.stream().map(hole -> hole.times(factor)).toList());
    }

    public Outline moved(double x, double y) {
        return new Outline(edge.moved(x, y), holes.stream().map(hole -> hole.moved(x, y)).toList());
    }

    /** As seen from behind: left and right exchanged about the line x = 0. */
    public Outline mirrored() {
        return new Outline(edge.mirrored(), holes.stream().map(Ring::mirrored).toList());
    }

    /** Turned clockwise about the origin. */
    public Outline turned(double degrees) {
        return new Outline(edge.turned(degrees), holes.stream().map(hole -> hole.turned(degrees)).toList());
    }
}
