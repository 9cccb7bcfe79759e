package exergue.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Moves a line that is right to about a pixel onto the edge itself. At each place the picture is sampled across the line;
 * the edge is where half of the light has changed from what is outside to what is inside, since a pixel half covered by the
 * coin has half of each. Neighbours are held together, so that a speck moves nothing.
 */
final class SubPixel {

    private static final double STEP = 0.25;
    private static final int REACH = 20;
    private static final int PLATEAU = 6;
    private static final double FARTHEST = 2.5;
    private static final int NEIGHBOURS = 3;
    private static final int ROUNDS = 3;
    private static final double CLEAR_OF_EDGE = 1.5;
    private static final double LINE = 2.5;
    /** Of the contrast: with less of a step there is no edge to be found between the two lines. */
    private static final double LEAST_STEP = 0.2;

    private final Scene scene;
    private final double clear;

    /** @param clear contrast, in light 0 to 1, from which an edge counts as clear */
    SubPixel(Scene scene, double clear) {
        this.scene = scene;
        this.clear = clear;
    }

    /** @param clear part of the places at which the edge stood out clearly */
    record Edge(Ring ring, double clear) { }

    Edge on(Ring rough) {
        Ring even = Resampled.smoothed(Resampled.evenly(rough, 1.0), 2);
        double[] moves = new double[even.size()];
        boolean[] sure = new boolean[even.size()];
        int count = 0;
        for (int i = 0; i < even.size(); i++) {
            Point normal = normal(even, i);
            double move = crossing(even.at(i), normal);
            sure[i] = !Double.isNaN(move);
            moves[i] = sure[i] ? move : 0;
            count += sure[i] ? 1 : 0;
        }
        List<Point> moved = new ArrayList<>();
        for (int i = 0; i < even.size(); i++) {
            Point normal = normal(even, i);
            double move = settled(moves, i);
            moved.add(new Point(even.at(i).x() + normal.x() * move, even.at(i).y() + normal.y() * move));
        }
        return new Edge(Resampled.smoothed(new Ring(moved), 1), count / (double) even.size());
    }

    /** Of unit length, out of what lies to the left of the line as it runs. */
    private static Point normal(Ring ring, int index) {
        Point before = ring.at(index - 2);
        Point after = ring.at(index + 2);
        double length = Math.max(1e-9, before.distance(after));
        return new Point(-(after.y() - before.y()) / length, (after.x() - before.x()) / length);
    }

    /** The median of the moves about a place. */
    private static double settled(double[] moves, int index) {
        double[] about = new double[2 * NEIGHBOURS + 1];
        for (int i = -NEIGHBOURS; i <= NEIGHBOURS; i++) {
            about[i + NEIGHBOURS] = moves[Math.floorMod(index + i, moves.length)];
        }
        Arrays.sort(about);
        return about[NEIGHBOURS];
    }

    /** How far the edge lies out from the place; not a number where there is no clear one. */
    private double crossing(Point place, Point normal) {
        int channels = scene.light().size();
        double[][] samples = new double[2 * REACH + 1][channels];
        for (int i = -REACH; i <= REACH; i++) {
            for (int c = 0; c < channels; c++) {
                samples[i + REACH][c] = scene.light().get(c)
                        .between(place.x() + normal.x() * i * STEP, place.y() + normal.y() * i * STEP);
            }
        }
        double[] inside = mean(samples, 0, PLATEAU);
        double[] outside = mean(samples, samples.length - PLATEAU, samples.length);
        double contrast = 0;
        for (int c = 0; c < channels; c++) {
            contrast += (inside[c] - outside[c]) * (inside[c] - outside[c]);
        }
        if (Math.sqrt(contrast / channels) < clear) {
            return Double.NaN;
        }
        return edge(covered(samples, inside, outside));
    }

    private static double[] mean(double[][] samples, int from, int to) {
        double[] mean = new double[samples[0].length];
        for (int i = from; i < to; i++) {
            for (int c = 0; c < mean.length; c++) {
                mean[c] += samples[i][c] / (to - from);
            }
        }
        return mean;
    }

    /** How much of the inside is in each sample: 1 inside, 0 outside. */
    private static double[] covered(double[][] samples, double[] inside, double[] outside) {
        double[] covered = new double[samples.length];
        double square = 0;
        for (int c = 0; c < inside.length; c++) {
            square += (inside[c] - outside[c]) * (inside[c] - outside[c]);
        }
        for (int i = 0; i < samples.length; i++) {
            for (int c = 0; c < inside.length; c++) {
                covered[i] += (samples[i][c] - outside[c]) * (inside[c] - outside[c]) / square;
            }
        }
        return covered;
    }

    /**
     * Where the sampled line passes half way from the outside to the inside, both taken as they are right at the edge: a rim
     * that slopes away darkens towards its edge, and a ground darkens towards the coin that shades it.
     */
    private static double edge(double[] covered) {
        double at = nearest(covered, 0, 0.5);
        for (int round = 0; round < ROUNDS && !Double.isNaN(at); round++) {
            double inner = led(covered, at, -1);
            double outer = led(covered, at, 1);
            at = inner - outer < LEAST_STEP ? at : nearest(covered, at, (inner + outer) / 2);
        }
        return at;
    }

    /** The straight line through the samples on one side of the edge, but clear of it, led on to the edge. */
    private static double led(double[] covered, double edge, int side) {
        double n = 0;
        double x = 0;
        double y = 0;
        double xx = 0;
        double xy = 0;
        for (double off = CLEAR_OF_EDGE; off <= CLEAR_OF_EDGE + LINE; off += STEP) {
            double index = (edge + side * off) / STEP + REACH;
            if (index >= 0 && index <= covered.length - 1) {
                double value = covered[(int) Math.round(index)];
                n++;
                x += off;
                y += value;
                xx += off * off;
                xy += off * value;
            }
        }
        double slope = n < 3 ? 0 : (n * xy - x * y) / (n * xx - x * x);
        return n == 0 ? (side < 0 ? 1 : 0) : (y - slope * x) / n;
    }

    /** The place nearest to another where the samples fall through a level. */
    private static double nearest(double[] covered, double to, double level) {
        double best = Double.NaN;
        for (int i = 1; i < covered.length; i++) {
            if (covered[i - 1] > level && covered[i] <= level) {
                double part = (covered[i - 1] - level) / (covered[i - 1] - covered[i]);
                double at = (i - 1 + part - REACH) * STEP;
                if (Math.abs(at) <= FARTHEST && (Double.isNaN(best) || Math.abs(at - to) < Math.abs(best - to))) {
                    best = at;
                }
            }
        }
        return best;
    }
}
