package exergue.photo;

/**
 * A diameter as callipers take it: the distance of two parallel lines that touch the outline from both sides.
 *
 * @param length  in the unit of the outline
 * @param degrees in which direction it is taken, clockwise from straight up, 0 to just under 180
 * @param from    where one of the lines touches
 * @param to      straight across from there, on the other
 */
public record Caliper(double length, double degrees, Point from, Point to) {

    private static final double HALF_TURN = 180;

    static Caliper between(Point from, Point to) {
        double degrees = Math.toDegrees(Math.atan2(to.x() - from.x(), from.y() - to.y())) % HALF_TURN;
        double upward = degrees < 0 ? degrees + HALF_TURN : degrees;
        return new Caliper(from.distance(to), upward >= HALF_TURN ? 0 : upward, from, to);
    }
}
