package exergue.photo;

/**
 * A diameter as callipers take it: the distance of two parallel lines that touch the outline from both sides.
 *
 * @param length  in the unit of the outline
 * @param degrees in which direction it is taken, clockwise from straight up, 0 to just under 180
 */
public record Caliper(double length, double degrees) {

    private static final double HALF_TURN = 180;

    /** Of the distance from one place to another. */
    static Caliper between(Point one, Point other) {
        return along(other.x() - one.x(), other.y() - one.y(), one.distance(other));
    }

    /** Of this length in the direction of x, y. */
    static Caliper along(double x, double y, double length) {
        double degrees = Math.toDegrees(Math.atan2(x, -y)) % HALF_TURN;
        double upward = degrees < 0 ? degrees + HALF_TURN : degrees;
        return new Caliper(length, upward >= HALF_TURN ? 0 : upward);
    }

    Caliper times(double factor) {
        return new Caliper(length * factor, degrees);
    }
}
