package exergue.photo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A patch of one shade that could be a division of a scale bar. */
record Block(Point middle, int size, boolean dark, Patch patch) {

    /** Of the way from the darkest to the lightest shade of the picture. */
    private static final double BLACK = 0.4;
    private static final double WHITE = 0.6;
    private static final int SMALLEST = 9;
    private static final int MOST = 400;
    private static final double SLENDER = 12;

    /** Every block, dark ones first; those at the frame are no whole divisions. */
    static List<Block> all(Plane grey) {
        float[] range = range(grey);
        List<Block> all = new ArrayList<>();
        all.addAll(of(grey, range[0] + BLACK * (range[1] - range[0]), true));
        all.addAll(of(grey, range[0] + WHITE * (range[1] - range[0]), false));
        return all;
    }

    private static float[] range(Plane grey) {
        float least = 1;
        float most = 0;
        for (int y = 0; y < grey.height(); y++) {
            for (int x = 0; x < grey.width(); x++) {
                least = Math.min(least, grey.at(x, y));
                most = Math.max(most, grey.at(x, y));
            }
        }
        return new float[] {least, most};
    }

    private static List<Block> of(Plane grey, double level, boolean dark) {
        Mask mask = new Mask(grey.width(), grey.height());
        for (int at = 0; at < grey.width() * grey.height(); at++) {
            if (grey.at(at % grey.width(), at / grey.width()) < level == dark) {
                mask.mark(at);
            }
        }
        return Patch.of(mask, SMALLEST).stream().filter(patch -> !patch.touchesFrame())
                .filter(patch -> Math.max(patch.across(), patch.down()) < SLENDER * Math.min(patch.across(), patch.down()))
                .sorted(Comparator.comparingInt(Patch::size).reversed()).limit(MOST)
                .map(patch -> new Block(middle(patch), patch.size(), dark, patch)).toList();
    }

    private static Point middle(Patch patch) {
        double x = 0;
        double y = 0;
        for (int at : patch.pixels()) {
            x += at % patch.width() + 0.5;
            y += at / patch.width() + 0.5;
        }
        return new Point(x / patch.size(), y / patch.size());
    }

    boolean alike(Block other) {
        return dark == other.dark && Math.min(size, other.size) > 0.7 * Math.max(size, other.size);
    }
}
