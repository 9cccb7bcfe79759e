package exergue.photo;

/** A place on a picture, in pixels: x to the right, y down. */
public record Point(double x, double y) {

    double distance(Point other) {
        return Math.hypot(x - other.x, y - other.y);
    }
}
