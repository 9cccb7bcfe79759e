package exergue.photo;

import exergue.photo.Outlined.Found;
import exergue.photo.Outlined.Reason;
import exergue.photo.Outlined.Refused;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the edge of a coin on a plain ground: light, dark or coloured, with shadow and light that falls off. */
public final class Outliner {

    private static final int SMALLEST_SIDE = 40;
    private static final double LEAST_CONTRAST = 0.05;
    private static final double NOISE_TIMES = 4;
    /** Of the picture: less than that is dust, a letter, a division of the scale bar. */
    private static final double LEAST_PART = 0.004;
    /** Of the larger side: less than that is not the other side, more is not dust. */
    private static final double DUST = 0.08;
    private static final double ALIKE = 0.75;
    private static final double SLENDER = 2.6;
    private static final double LEAST_CLEAR = 0.93;
    private static final double LEAST_STEEP = 0.015;
    private static final double STEEP_TIMES = 5;
    private static final int GAP = 3;
    /** In pixels: more than the profiles across an edge, blurs and rough lines reach. */
    private static final int SURROUNDINGS = 24;
    private static final double MUCH_MORE = 1.03;
    /** Of its hull a coin fills more than that, unless it is nicked. */
    private static final double FULL = 0.985;

    private final Scene scene;
    private final double threshold;

    private Outliner(Scene scene) {
        this.scene = scene;
        this.threshold = Math.max(LEAST_CONTRAST, NOISE_TIMES * scene.ground().noise() / scene.soft());
    }

    /** The outlines of the coin’s sides that the picture shows, or why there are none. */
    public static Outlined find(Raster raster) {
        int times = Scene.reduction(raster);
        Raster reduced = raster.reduced(times);
        if (Math.min(reduced.width(), reduced.height()) < SMALLEST_SIDE) {
            return new Refused(Reason.TOO_SMALL);
        }
        Optional<Ground> ground = Ground.of(reduced);
        return ground.isEmpty() ? new Refused(Reason.GROUND_NOT_PLAIN)
                : withoutBar(new Outliner(Scene.of(reduced, ground.get(), times)).find(), raster);
    }

    /** A scale bar that touches a coin makes one thing with it; it is looked for only where an edge is hollow in some place. */
    private static Outlined withoutBar(Outlined outlined, Raster raster) {
        if (outlined instanceof Found found && found.outlines().stream().anyMatch(coin -> coin.edge().area() < FULL * coin.hull().area())
                && ScaleBar.find(raster) instanceof ScaleBarRead.Read bar && found.outlines().stream().anyMatch(bar::touches)) {
            return new Refused(Reason.BAR_TOUCHING);
        }
        return outlined;
    }

    private Outlined find() {
        Mask apart = apart();
        List<Patch> large = Patch.of(apart, (int) (LEAST_PART * scene.width() * scene.height())).stream()
                .filter(Outliner::isCoinLike).sorted(Comparator.comparingInt(patch -> -patch.size())).toList();
        if (large.isEmpty()) {
            return new Refused(Reason.NO_CONTRAST);
        }
        List<Patch> coins = large.stream().filter(patch -> patch.size() > DUST * large.get(0).size()).toList();
        if (coins.stream().anyMatch(Patch::touchesFrame)) {
            return new Refused(Reason.CUT_BY_FRAME);
        }
        if (coins.size() > 2 || coins.size() == 2 && !sideBySide(coins.get(0), coins.get(1))) {
            return new Refused(Reason.SEVERAL_OBJECTS);
        }
        return coins.stream().anyMatch(Patch::isTwo) ? new Refused(Reason.TOUCHING)
                : drawn(coins.stream().sorted(Comparator.comparingInt(Patch::left)).toList());
    }

    /**
     * What is not ground, with all that it shuts in. A coin of nearly the shade of its ground shows by its rim alone, and that
     * with gaps: if closing them shuts in much more, they are closed.
     */
    private Mask apart() {
        Mask apart = new Mask(scene.width(), scene.height());
        double steep = Math.max(LEAST_STEEP, STEEP_TIMES * scene.steepOfGround());
        for (int y = 0; y < scene.height(); y++) {
            for (int x = 0; x < scene.width(); x++) {
                if (scene.distance().at(x, y) > threshold || scene.steepness().at(x, y) > steep) {
                    apart.mark(y * scene.width() + x);
                }
            }
        }
        Mask open = apart.filled();
        Mask closed = apart.grown(GAP).filled().shrunk(GAP);
        return closed.count() > MUCH_MORE * open.count() ? closed : open;
    }

    /** A scale bar is much longer than wide. */
    private static boolean isCoinLike(Patch patch) {
        return Math.max(patch.across(), patch.down()) < SLENDER * Math.min(patch.across(), patch.down());
    }

    private static boolean sideBySide(Patch one, Patch other) {
        boolean apart = one.right() < other.left() || other.right() < one.left();
        boolean alike = Math.min(one.size(), other.size()) > ALIKE * Math.max(one.size(), other.size());
        return apart && alike && one.top() < other.bottom() && other.top() < one.bottom();
    }

    private Outlined drawn(List<Patch> coins) {
        List<Outline> outlines = new ArrayList<>();
        double clear = 1;
        for (Patch coin : coins) {
            Optional<Drawn> drawn = edge(coin).filter(edge -> edge.clear() >= LEAST_CLEAR);
            if (drawn.isEmpty()) {
                return new Refused(Reason.EDGE_UNCLEAR);
            }
            clear = Math.min(clear, drawn.get().clear());
            outlines.add(drawn.get().outline().times(scene.times()));
        }
        return new Found(outlines, clear, scene.ground().described());
    }

    /** Nothing but the coin and its surroundings is looked at: farther than they reach, the edge depends on nothing. */
    private Optional<Drawn> edge(Patch coin) {
        int x = Math.max(0, coin.left() - SURROUNDINGS);
        int y = Math.max(0, coin.top() - SURROUNDINGS);
        int width = Math.min(scene.width(), coin.right() + 1 + SURROUNDINGS) - x;
        int height = Math.min(scene.height(), coin.bottom() + 1 + SURROUNDINGS) - y;
        return new CoinEdge(scene.part(x, y, width, height), threshold).of(coin.on(x, y, width, height))
                .map(drawn -> new Drawn(drawn.outline().moved(x, y), drawn.clear()));
    }

    /** @param clear the part of its edge that stood out clearly */
    record Drawn(Outline outline, double clear) { }
}
