package exergue.photo;

import exergue.photo.Outliner.Drawn;
import java.util.ArrayList;
import java.util.List;

/** Draws one coin’s edge: first shares out what may be its shadow, then draws the line, then looks for holes. */
final class CoinEdge {

    private static final double SOFT = 1.0;
    /** What lies this deep in the patch, as part of its greatest depth, is coin and no shadow. */
    private static final double CORE = 0.35;
    /** So many pixels does the colour of the coin run over its edge, by the lens and by what JPEG does to colours. */
    private static final int BLEEDING = 4;
    /** A hole is at least this part of the coin. */
    private static final double LEAST_HOLE = 0.0015;
    private static final double HOLE_FILLED = 0.7;
    private static final double CLEAR_TIMES = 0.8;

    private final Scene scene;
    private final double threshold;

    CoinEdge(Scene scene, double threshold) {
        this.scene = scene;
        this.threshold = threshold;
    }

    Drawn of(Patch patch) {
        Mask outside = outside(patch);
        Mask filled = outside.others();
        Mask shared = Flood.of(scene.steepness(), certain(filled), outside);
        Mask coin = largest(shared);
        SubPixel precise = new SubPixel(scene, CLEAR_TIMES * threshold);
        SubPixel.Edge edge = precise.on(line(filledUp(coin)));
        List<Ring> holes = new ArrayList<>();
        for (Patch hole : holes(patch, coin)) {
            holes.add(precise.on(reversed(line(hole.mask()))).ring());
        }
        return new Drawn(new Outline(edge.ring(), holes), edge.clear());
    }

    /** All that can be reached from the frame without stepping on the patch. */
    private static Mask outside(Patch patch) {
        Mask rest = patch.mask().others();
        return Patch.of(rest, 1).stream().filter(Patch::touchesFrame).map(Patch::mask)
                .reduce(new Mask(rest.width(), rest.height()), Mask::and);
    }

    private Mask certain(Mask filled) {
        int[] depth = Depth.of(filled);
        int deepest = 0;
        for (int d : depth) {
            deepest = Math.max(deepest, d);
        }
        int[] unlike = Depth.of(unlikeShadow(filled));
        Mask certain = new Mask(filled.width(), filled.height());
        for (int at = filled.next(0); at >= 0; at = filled.next(at + 1)) {
            if (depth[at] > CORE * deepest || unlike[at] > BLEEDING) {
                certain.mark(at);
            }
        }
        return certain;
    }

    private Mask unlikeShadow(Mask filled) {
        Mask unlike = new Mask(filled.width(), filled.height());
        for (int at = filled.next(0); at >= 0; at = filled.next(at + 1)) {
            if (!scene.likeShadow(at % filled.width(), at / filled.width())) {
                unlike.mark(at);
            }
        }
        return unlike;
    }

    private static Mask largest(Mask mask) {
        return Patch.of(mask, 1).stream().max((one, other) -> Integer.compare(one.size(), other.size())).map(Patch::mask)
                .orElse(mask);
    }

    private static Mask filledUp(Mask mask) {
        return Patch.of(mask.others(), 1).stream().filter(Patch::touchesFrame).map(Patch::mask)
                .reduce(new Mask(mask.width(), mask.height()), Mask::and).others();
    }

    private static Ring line(Mask mask) {
        Plane plane = new Plane(mask.width(), mask.height());
        for (int at = mask.next(0); at >= 0; at = mask.next(at + 1)) {
            plane.set(at % mask.width(), at / mask.width(), 1);
        }
        return Contour.of(plane.blurred(SOFT), 0.5).get(0);
    }

    private static Ring reversed(Ring ring) {
        List<Point> points = new ArrayList<>(ring.points());
        java.util.Collections.reverse(points);
        return new Ring(points);
    }

    /** Places inside the coin where the ground itself shows: of its very colour, compact and not too small. */
    private List<Patch> holes(Patch patch, Mask coin) {
        Mask ground = filledUp(coin).without(patch.mask());
        return Patch.of(ground, (int) Math.max(9, LEAST_HOLE * patch.size())).stream()
                .filter(hole -> hole.size() > HOLE_FILLED * Math.PI / 4 * hole.across() * hole.down()).toList();
    }
}
