package exergue.photo;

import java.util.ArrayList;
import java.util.List;

/** Rings with their places set anew. */
final class Resampled {

    private Resampled() { }

    /** Places at even distances along the line, about this far apart. */
    static Ring evenly(Ring ring, double apart) {
        double length = ring.perimeter();
        int count = Math.max(8, (int) Math.round(length / apart));
        double step = length / count;
        List<Point> places = new ArrayList<>();
        double passed = 0;
        for (int i = 0; i < ring.size(); i++) {
            Point from = ring.at(i);
            Point to = ring.at(i + 1);
            double side = from.distance(to);
            while (places.size() < count && places.size() * step <= passed + side) {
                double part = side == 0 ? 0 : (places.size() * step - passed) / side;
                places.add(new Point(from.x() + (to.x() - from.x()) * part, from.y() + (to.y() - from.y()) * part));
            }
            passed += side;
        }
        return new Ring(places);
    }

    /**
     * Steps and roughness of a pixel taken out, {@code times} over, without the shrinking that plain smoothing brings: each
     * round in is followed by one out. (Taubin, A signal processing approach to fair surface design, 1995.)
     */
    static Ring smoothed(Ring ring, int times) {
        Ring now = ring;
        for (int i = 0; i < times; i++) {
            now = drawn(drawn(now, 0.5), -0.53);
        }
        return now;
    }

    private static Ring drawn(Ring ring, double by) {
        List<Point> places = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point at = ring.at(i);
            double x = (ring.at(i - 1).x() + ring.at(i + 1).x()) / 2 - at.x();
            double y = (ring.at(i - 1).y() + ring.at(i + 1).y()) / 2 - at.y();
            places.add(new Point(at.x() + x * by, at.y() + y * by));
        }
        return new Ring(places);
    }
}
