package exergue.photo;

import java.util.Arrays;

/**
 * The distance of an edge from its centre of gravity in even directions, clockwise from straight up, as part of the mean
 * distance: what is left of an outline when place and size are taken out. Where the edge folds back, its farthest place counts.
 */
record EdgeProfile(double[] distances) {

    /** A power of two, for the Fourier transform; about a third of a degree each. */
    static final int DIRECTIONS = 1024;
    private static final int FINER = 4;

    EdgeProfile {
        distances = distances.clone();
    }

    static EdgeProfile of(Ring edge) {
        Point middle = edge.centroid();
        Ring fine = Resampled.evenly(edge, edge.perimeter() / (FINER * DIRECTIONS));
        double[] farthest = new double[DIRECTIONS];
        for (int i = 0; i < fine.size(); i++) {
            double x = fine.at(i).x() - middle.x();
            double y = fine.at(i).y() - middle.y();
            int direction = Math.floorMod((int) Math.round(Math.atan2(x, -y) / (2 * Math.PI) * DIRECTIONS), DIRECTIONS);
            farthest[direction] = Math.max(farthest[direction], Math.hypot(x, y));
        }
        return new EdgeProfile(inParts(filled(farthest)));
    }

    /** A direction that no place fell into takes what is halfway between its neighbours that have one. */
    private static double[] filled(double[] farthest) {
        double[] filled = farthest.clone();
        for (int i = 0; i < filled.length; i++) {
            int before = i;
            int after = i;
            while (farthest[Math.floorMod(before, filled.length)] == 0) {
                before--;
            }
            while (farthest[Math.floorMod(after, filled.length)] == 0) {
                after++;
            }
            filled[i] = (farthest[Math.floorMod(before, filled.length)] + farthest[Math.floorMod(after, filled.length)]) / 2;
        }
        return filled;
    }

    private static double[] inParts(double[] distances) {
        double mean = Arrays.stream(distances).average().orElse(1);
        return Arrays.stream(distances).map(distance -> distance / mean - 1).toArray();
    }

    /** How far from round: the standard deviation of the distances as part of their mean. */
    double unevenness() {
        return Math.sqrt(Arrays.stream(distances).map(part -> part * part).average().orElse(0));
    }
}
