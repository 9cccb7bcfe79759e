package exergue.photo.print;

import exergue.photo.Outline;
import exergue.photo.Point;
import exergue.photo.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The outline of a coin as part of its picture, so that a browser shows no white around it. */
final class ClipShape {

    private static final int CORNERS = 90;
    /** Pixels of the picture by which it is drawn in, past the softness of the edge. */
    private static final double INSET = 1.2;
    private static final double HUNDRED = 100;

    private ClipShape() { }

    /** Places in per cent of width and height: "12.3% 4.5%, …". Holes are reached from the edge and left the same way. */
    static String of(Outline outline, Cut.Frame frame) {
        Outline placed = outline.moved(-frame.left(), -frame.top()).times(1 / frame.step());
        List<Point> places = new ArrayList<>(drawnIn(placed.edge()));
        places.add(places.get(0));
        for (Ring hole : placed.holes()) {
            List<Point> inside = drawnIn(hole);
            places.addAll(inside);
            places.add(inside.get(0));
            places.add(places.get(0));
        }
        return places.stream().map(place -> percent(place.x() / frame.width()) + " " + percent(place.y() / frame.height()))
                .collect(Collectors.joining(", "));
    }

    private static List<Point> drawnIn(Ring ring) {
        Point middle = ring.centroid();
        double part = 1 - INSET / Math.max(2 * INSET, Math.sqrt(ring.area() / Math.PI));
        List<Point> places = new ArrayList<>();
        int corners = Math.min(CORNERS, ring.size());
        for (int i = 0; i < corners; i++) {
            Point place = ring.points().get((int) ((long) i * ring.size() / corners));
            places.add(new Point(middle.x() + (place.x() - middle.x()) * part, middle.y() + (place.y() - middle.y()) * part));
        }
        return places;
    }

    private static String percent(double part) {
        return String.format(Locale.ROOT, "%.1f%%", part * HUNDRED);
    }
}
