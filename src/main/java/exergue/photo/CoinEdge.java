package exergue.photo;

import exergue.photo.Outliner.Drawn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws one coin’s edge: first shares out what may be its shadow, then draws the line, then looks for holes. */
final class CoinEdge {

    private static final double SOFT = 1.0;
    /** What lies this deep in the patch, as part of its greatest depth, is coin and no shadow. */
    private static final double CORE = 0.2;
    /** Of the lightness of the ground: what is lighter than that over a few pixels is in no shadow. */
    private static final double IN_THE_LIGHT = 0.93;
    private static final int ABOUT = 6;
    /** So many pixels does the colour of the coin run over its edge, by the lens and by what JPEG does to colours. */
    private static final int BLEEDING = 4;
    /** A hole is at least this part of the coin. */
    private static final double LEAST_HOLE = 0.0015;
    private static final double HOLE_FILLED = 0.7;
    /** Where so much of a coin has the shade of its ground, nothing on it can be told to be a hole. */
    private static final double MOST_LIKE_GROUND = 0.03;
    private static final double CLEAR_TIMES = 0.8;
    /** Grain makes bumps on the edge; those of twice this width, in units of the blur against it, are taken off. */
    private static final double BUMP = 1.8;

    private final Scene scene;
    private final double threshold;
    private final SubPixel precise;

    /** @param threshold distance from the ground from which a pixel is no longer taken for ground */
    CoinEdge(Scene scene, double threshold) {
        this.scene = scene;
        this.threshold = threshold;
        this.precise = new SubPixel(scene, CLEAR_TIMES * threshold);
    }

    /** Empty where nothing of the patch is as thick as a coin. @param patch the coin with its shadow, filled */
    Optional<Drawn> of(Patch patch) {
        int bump = (int) Math.round(BUMP * scene.soft());
        Mask whole = patch.mask();
        Mask shared = Flood.of(scene.sharpness(), certain(whole), whole.others()).filled();
        Mask coin = largest(shared.and(noShadow(whole.without(shared))).filled().shrunk(bump).grown(bump));
        Optional<SubPixel.Edge> edge = line(coin).map(precise::on);
        List<Ring> holes = new ArrayList<>();
        for (Patch hole : holes(coin)) {
            line(hole.mask()).ifPresent(line -> holes.add(precise.on(reversed(line)).ring()));
        }
        return edge.map(found -> new Drawn(new Outline(found.ring(), holes), found.clear()));
    }

    /**
     * What was taken from the coin and is not darker than the ground: no shadow, but a rim that catches the light, with a
     * sharper edge behind it than before it.
     */
    private Mask noShadow(Mask taken) {
        if (taken.next(0) < 0) {
            return taken;
        }
        Plane share = new Plane(taken.width(), taken.height());
        Plane shade = new Plane(taken.width(), taken.height());
        for (int at = taken.next(0); at >= 0; at = taken.next(at + 1)) {
            share.set(at % taken.width(), at / taken.width(), 1);
            shade.set(at % taken.width(), at / taken.width(), scene.shade(at % taken.width(), at / taken.width()));
        }
        Plane shareAbout = share.summed(ABOUT);
        Plane shadeAbout = shade.summed(ABOUT);
        Mask lit = new Mask(taken.width(), taken.height());
        for (int at = taken.next(0); at >= 0; at = taken.next(at + 1)) {
            int x = at % taken.width();
            int y = at / taken.width();
            if (shadeAbout.at(x, y) > IN_THE_LIGHT * shareAbout.at(x, y)) {
                lit.mark(at);
            }
        }
        return lit;
    }

    private Mask certain(Mask filled) {
        int[] depth = Depth.of(filled, true);
        int deepest = 0;
        for (int d : depth) {
            deepest = Math.max(deepest, d);
        }
        int[] unlike = Depth.of(unlikeShadow(filled, depth, (int) (CORE * deepest)), true);
        Mask certain = new Mask(filled.width(), filled.height());
        for (int at = filled.next(0); at >= 0; at = filled.next(at + 1)) {
            if (depth[at] > CORE * deepest || unlike[at] > BLEEDING) {
                certain.mark(at);
            }
        }
        return certain;
    }

    /** What is no shadow by its colour; what lies deeper than that is none anyway. */
    private Mask unlikeShadow(Mask filled, int[] depth, int deep) {
        Mask unlike = new Mask(filled.width(), filled.height());
        for (int at = filled.next(0); at >= 0; at = filled.next(at + 1)) {
            if (depth[at] > deep || !scene.likeShadow(at % filled.width(), at / filled.width())) {
                unlike.mark(at);
            }
        }
        return unlike;
    }

    private static Mask largest(Mask mask) {
        return Patch.of(mask, 1).stream().max((one, other) -> Integer.compare(one.size(), other.size())).map(Patch::mask)
                .orElse(mask);
    }

    /** Empty for a scratch so thin that nothing of it is left between its two edges. */
    private static Optional<Ring> line(Mask mask) {
        Plane plane = new Plane(mask.width(), mask.height());
        for (int at = mask.next(0); at >= 0; at = mask.next(at + 1)) {
            plane.set(at % mask.width(), at / mask.width(), 1);
        }
        return Contour.of(plane.blurred(SOFT), 0.5).stream().findFirst();
    }

    private static Ring reversed(Ring ring) {
        List<Point> points = new ArrayList<>(ring.points());
        java.util.Collections.reverse(points);
        return new Ring(points);
    }

    /** Places inside the coin where the ground itself shows: of its very colour, compact and not too small. */
    private List<Patch> holes(Mask coin) {
        Mask ground = new Mask(coin.width(), coin.height());
        for (int at = coin.next(0); at >= 0; at = coin.next(at + 1)) {
            if (scene.distance().at(at % coin.width(), at / coin.width()) <= threshold) {
                ground.mark(at);
            }
        }
        List<Patch> holes = Patch.of(ground, (int) Math.max(9, LEAST_HOLE * coin.count())).stream()
                .filter(hole -> hole.size() > HOLE_FILLED * Math.PI / 4 * hole.across() * hole.down()).toList();
        int elsewhere = ground.count() - holes.stream().mapToInt(Patch::size).sum();
        return elsewhere > MOST_LIKE_GROUND * coin.count() ? List.of() : holes;
    }
}
