package exergue.photo;

import java.util.Arrays;
import java.util.List;

/**
 * Of all closed lines through a row of places the one that fits best and bends least, both weighed as a chance: the more grain
 * there is in a picture, the less a single place may draw the line to itself. Found by dynamic programming (Viterbi 1967).
 */
final class SmoothLine {

    /** How far, in pixels, the edge of a flan may well move out or in from one pixel to the next. */
    private static final double USUAL_STEP = 0.15;
    private static final int FARTHEST_STEP = 3;
    /** Past this a place counts no more: the model does not hold there, at a crack or a corner. */
    private static final double MOST = 40;
    private static final int OVERLAP = 40;
    /** So many neighbours see the same grain: the picture is sampled finer than its pixels, and JPEG smears them further. */
    private static final double ALIKE = 5;

    private static final double[] BENDS = bends();

    private final List<double[]> left;
    private final double unit;

    private SmoothLine(List<double[]> left) {
        this.left = left;
        double[] least = left.stream().mapToDouble(one -> Arrays.stream(one).min().orElse(0)).sorted().toArray();
        this.unit = Math.max(1e-9, 2 * ALIKE * least[least.length / 2] / EdgeModel.FREEDOM);
    }

    /** @param left for each place round the line what is left over by the model at every possible move */
    static double[] through(List<double[]> left) {
        return new SmoothLine(left).moves();
    }

    /** Once round and some way over at either end, so that where one begins does not matter. */
    private double[] moves() {
        int size = left.size();
        int all = size + 2 * OVERLAP;
        int[][] from = new int[all][EdgeModel.PLACES];
        double[] cost = cost(0);
        for (int i = 1; i < all; i++) {
            double[] own = cost(i);
            double[] next = new double[own.length];
            for (int to = 0; to < own.length; to++) {
                from[i][to] = cheapest(cost, to);
                next[to] = cost[from[i][to]] + bend(from[i][to], to) + own[to];
            }
            cost = next;
        }
        int at = least(cost);
        double[] moves = new double[size];
        for (int i = all - 1; i >= OVERLAP; i--) {
            if (i < OVERLAP + size) {
                moves[i - OVERLAP] = EdgeModel.between(left.get(i - OVERLAP), at);
            }
            at = from[i][at];
        }
        return moves;
    }

    private double[] cost(int index) {
        double[] own = left.get(Math.floorMod(index - OVERLAP, left.size()));
        double least = Arrays.stream(own).min().orElse(0);
        double[] cost = new double[own.length];
        for (int i = 0; i < cost.length; i++) {
            cost[i] = Math.min(MOST, (own[i] - least) / unit);
        }
        return cost;
    }

    private static int cheapest(double[] cost, int to) {
        int best = to;
        for (int from = Math.max(0, to - FARTHEST_STEP); from <= Math.min(cost.length - 1, to + FARTHEST_STEP); from++) {
            best = cost[from] + bend(from, to) < cost[best] + bend(best, to) ? from : best;
        }
        return best;
    }

    private static double bend(int from, int to) {
        return BENDS[Math.abs(to - from)];
    }

    private static double[] bends() {
        double[] bends = new double[FARTHEST_STEP + 1];
        for (int i = 0; i < bends.length; i++) {
            double step = (EdgeModel.place(i) - EdgeModel.place(0)) / USUAL_STEP;
            bends[i] = step * step / 2;
        }
        return bends;
    }

    private static int least(double[] cost) {
        int best = 0;
        for (int i = 1; i < cost.length; i++) {
            best = cost[i] < cost[best] ? i : best;
        }
        return best;
    }
}
