package exergue.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Moves a line that is right to about two pixels onto the edge itself. At each place the picture is sampled across the line, and
 * {@link EdgeModel} says where the edge lies. It is sampled as written and not as light: the shoulder of a coin grows dark
 * towards its edge, and on a dark ground that last bit of it counts for nothing in light, though the eye sees it. Neighbours are held together, so that a speck moves nothing.
 */
final class SubPixel {

    private static final int PLATEAU = 5;
    private static final int LANES = 2;
    private static final int EVERY = 11;
    private static final int ROUNDS = 2;
    private static final double SMOOTH = 4;
    private static final double GRAINY = 16;

    private final Scene scene;
    private final double clear;

    /** @param clear contrast, in samples 0 to 1, from which an edge counts as clear */
    SubPixel(Scene scene, double clear) {
        this.scene = scene;
        this.clear = clear;
    }

    /** @param clear part of the places at which the edge stood out clearly */
    record Edge(Ring ring, double clear) { }

    /** @param rough runs so that the coin lies to its left */
    Edge on(Ring rough) {
        Ring ring = Resampled.smoothed(Resampled.evenly(rough, 1.0), (int) Math.round(SMOOTH * scene.soft() * scene.soft()));
        double share = 0;
        EdgeModel model = null;
        for (int round = 0; round < ROUNDS; round++) {
            List<Profile> profiles = profiles(ring);
            share = profiles.stream().filter(profile -> profile.contrast() >= clear).count() / (double) profiles.size();
            model = model == null ? sharpest(profiles) : model;
            ring = Resampled.smoothed(Resampled.evenly(moved(ring, profiles, model), 1.0), 1 + (int) Math.round(GRAINY * (scene.soft() - Scene.SOFT)));
        }
        return new Edge(ring, share);
    }

    private static Ring moved(Ring ring, List<Profile> profiles, EdgeModel model) {
        double[] moves = SmoothLine.through(profiles.stream().map(profile -> model.left(profile.samples())).toList());
        List<Point> moved = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point normal = normal(ring, i);
            moved.add(new Point(ring.at(i).x() + normal.x() * moves[i], ring.at(i).y() + normal.y() * moves[i]));
        }
        return new Ring(moved);
    }

    /** The model whose blur is that of this picture: it leaves least over at all edges together. */
    private static EdgeModel sharpest(List<Profile> profiles) {
        EdgeModel best = EdgeModel.all()[0];
        double least = Double.POSITIVE_INFINITY;
        for (EdgeModel model : EdgeModel.all()) {
            double[] left = new double[(profiles.size() + EVERY - 1) / EVERY];
            for (int i = 0; i < left.length; i++) {
                left[i] = Arrays.stream(model.left(profiles.get(i * EVERY).samples())).min().orElse(0);
            }
            Arrays.sort(left);
            double most = Arrays.stream(left, 0, left.length * 9 / 10).sum(); // without those that no model fits
            if (most < least) {
                least = most;
                best = model;
            }
        }
        return best;
    }

    /** Of unit length, out of what lies to the left of the line as it runs. */
    private static Point normal(Ring ring, int index) {
        Point before = ring.at(index - 3);
        Point after = ring.at(index + 3);
        double length = Math.max(1e-9, before.distance(after));
        return new Point(-(after.y() - before.y()) / length, (after.x() - before.x()) / length);
    }

    /**
     * What is seen across the line, from the inside to the outside.
     *
     * @param samples as written, along the direction of colour in which inside and outside differ
     */
    private record Profile(double[] samples, double contrast) { }

    private List<Profile> profiles(Ring ring) {
        List<Profile> profiles = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            profiles.add(across(ring.at(i), normal(ring, i)));
        }
        return profiles;
    }

    private Profile across(Point place, Point normal) {
        int count = 2 * EdgeModel.REACH + 1;
        double[] samples = new double[count];
        double contrast = 0;
        for (Plane channel : scene.written()) {
            double[] light = new double[count];
            for (int i = 0; i < count; i++) {
                light[i] = light(channel, place, normal, (i - EdgeModel.REACH) * EdgeModel.STEP);
            }
            double inside = mean(light, 0);
            double outside = mean(light, count - PLATEAU);
            contrast += (inside - outside) * (inside - outside);
            for (int i = 0; i < count; i++) {
                samples[i] += (light[i] - outside) * (inside - outside);
            }
        }
        double length = Math.sqrt(contrast);
        for (int i = 0; i < count; i++) {
            samples[i] /= Math.max(1e-6, length);
        }
        return new Profile(samples, length / Math.sqrt(scene.written().size()));
    }

    /** So far out from the place, as a mean of some pixels along the line. */
    private static double light(Plane channel, Point place, Point normal, double out) {
        double sum = 0;
        for (int lane = -LANES; lane <= LANES; lane++) {
            sum += channel.between(place.x() + normal.x() * out - normal.y() * lane / 2.0,
                    place.y() + normal.y() * out + normal.x() * lane / 2.0);
        }
        return sum / (2 * LANES + 1);
    }

    private static double mean(double[] light, int from) {
        double sum = 0;
        for (int i = from; i < from + PLATEAU; i++) {
            sum += light[i];
        }
        return sum / PLATEAU;
    }
}
