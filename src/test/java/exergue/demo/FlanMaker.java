package exergue.demo;

import exergue.demo.Flan.Corner;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Makes flans as smiths did: round but never quite, cut square, cast in a mould; then breaks, clips and pierces them. */
final class FlanMaker {

    private static final int CORNERS = 720;

    private final Random chance;

    FlanMaker(long seed) {
        this.chance = new Random(seed);
    }

    /** A hammered flan about 2 mm across; unevenness 1 is a usual one, 0 a circle, with short cracks in its edge. */
    Flan struck(double uneven, int cracks) {
        double[] swell = new double[14];
        double[] phase = new double[14];
        for (int i = 0; i < swell.length; i++) {
            swell[i] = uneven * chance.nextGaussian() * 0.020 / Math.pow(1 + i, 0.95);
            phase[i] = chance.nextDouble() * 2 * Math.PI;
        }
        double[] at = new double[cracks];
        double[] deep = new double[cracks];
        for (int i = 0; i < cracks; i++) {
            at[i] = chance.nextDouble() * 2 * Math.PI;
            deep[i] = 0.015 + 0.09 * Math.pow(chance.nextDouble(), 2);
        }
        List<Corner> edge = new ArrayList<>();
        for (int i = 0; i < CORNERS; i++) {
            double turn = 2 * Math.PI * i / CORNERS;
            double far = 1;
            for (int k = 0; k < swell.length; k++) {
                far += swell[k] * Math.cos((k + 2) * turn + phase[k]);
            }
            for (int k = 0; k < cracks; k++) {
                double off = Math.abs(Math.IEEEremainder(turn - at[k], 2 * Math.PI));
                far -= deep[k] * Math.max(0, 1 - off / (0.16 * deep[k] + 0.010));
            }
            edge.add(new Corner(far * Math.cos(turn), far * Math.sin(turn)));
        }
        return new Flan(edge, List.of());
    }

    /** A polygon of so many sides with rounded corners and hand-cut edges, about 2 mm across, a flat side on top. */
    Flan sided(int sides, double wide, double high) {
        List<Corner> edge = new ArrayList<>();
        double[] pull = new double[sides];
        double[] swell = new double[9];
        double[] phase = new double[9];
        for (int i = 0; i < sides; i++) {
            pull[i] = chance.nextGaussian() * 0.022;
        }
        for (int i = 0; i < swell.length; i++) {
            swell[i] = chance.nextGaussian() * 0.009 / (1 + i * 0.4);
            phase[i] = chance.nextDouble() * 2 * Math.PI;
        }
        double power = sides == 4 ? 14 : 26;
        for (int i = 0; i < CORNERS; i++) {
            double turn = 2 * Math.PI * i / CORNERS;
            double sum = 0;
            for (int side = 0; side < sides; side++) {
                double normal = -Math.PI / 2 + 2 * Math.PI * side / sides;
                double toward = Math.cos(turn - normal) / (1 + pull[side]);
                sum += toward > 0 ? Math.pow(toward, power) : 0;
            }
            double far = Math.pow(sum, -1 / power);
            for (int k = 0; k < swell.length; k++) {
                far += swell[k] * Math.cos((k + 3) * turn + phase[k]);
            }
            edge.add(new Corner(far * Math.cos(turn) * wide, far * Math.sin(turn) * high));
        }
        return new Flan(edge, List.of());
    }

    /** A cast disc with the stumps of the runners at top and bottom. */
    Flan cast(double stump) {
        Flan disc = struck(0.35, 0);
        Area whole = new Area(disc.shape());
        double lean = chance.nextGaussian() * 0.03;
        whole.add(new Area(Graver.through(true, -0.17, -0.93, -0.13 + lean, -1.0 - stump, 0.02, -1.02 - stump, 0.14 + lean, -0.99 - stump,
                0.18, -0.93, 0.0, -0.8)));
        whole.add(new Area(Graver.through(true, -0.16, 0.93, -0.12 - lean, 1.0 + stump * 0.6, 0.0, 1.0 + stump * 0.7, 0.13, 0.99 + stump * 0.6,
                0.17, 0.93, 0.0, 0.8)));
        return of(whole);
    }

    /** Takes away what lies beyond a straight cut at this distance from the middle, seen in this direction clockwise from the top. */
    Flan clipped(Flan flan, double degrees, double distance) {
        Area rest = new Area(flan.shape());
        AffineTransform turn = AffineTransform.getRotateInstance(Math.toRadians(degrees));
        rest.subtract(new Area(turn.createTransformedShape(Graver.corners(-9, -9, 9, -9, 9, -distance, -9, -distance - 0.02))));
        return of(rest);
    }

    /** Breaks a part off: a line as metal breaks, at this distance from the middle in this direction. */
    Flan broken(Flan flan, double degrees, double distance) {
        List<Double> line = new ArrayList<>(List.of(-9.0, -9.0, 9.0, -9.0, 9.0, -distance));
        double x = 1.6;
        double drift = chance.nextGaussian() * 0.05;
        while (x > -1.6) {
            line.add(x);
            line.add(-distance + drift + chance.nextGaussian() * 0.022);
            drift = drift * 0.86 + chance.nextGaussian() * 0.035;
            x -= 0.04 + 0.06 * chance.nextDouble();
        }
        line.addAll(List.of(-9.0, -distance));
        Area rest = new Area(flan.shape());
        AffineTransform turn = AffineTransform.getRotateInstance(Math.toRadians(degrees));
        rest.subtract(new Area(turn.createTransformedShape(Graver.corners(line.stream().mapToDouble(Double::doubleValue).toArray()))));
        return of(rest);
    }

    /** A bite out of the edge. */
    Flan nicked(Flan flan, double degrees, double size) {
        double[] bite = new double[18];
        double turn = Math.toRadians(degrees - 90);
        double far = reach(flan, turn);
        for (int i = 0; i < 9; i++) {
            double round = 2 * Math.PI * i / 9;
            double wide = size * (0.8 + 0.35 * chance.nextDouble());
            bite[2 * i] = far * Math.cos(turn) + wide * Math.cos(round);
            bite[2 * i + 1] = far * Math.sin(turn) + wide * Math.sin(round);
        }
        Area rest = new Area(flan.shape());
        rest.subtract(new Area(Graver.through(true, bite)));
        return of(rest);
    }

    private static double reach(Flan flan, double turn) {
        return flan.edge().stream().mapToDouble(corner -> corner.x() * Math.cos(turn) + corner.y() * Math.sin(turn)).max().orElse(1);
    }

    Flan pierced(Flan flan, double degrees, double distance, double radius) {
        List<Corner> hole = new ArrayList<>();
        double turn = Math.toRadians(degrees - 90);
        double phase = chance.nextDouble() * 6;
        for (int i = 0; i < 96; i++) {
            double round = -2 * Math.PI * i / 96;
            double wide = radius * (1 + 0.06 * Math.cos(2 * round + phase) + 0.03 * Math.cos(3 * round));
            hole.add(new Corner(distance * Math.cos(turn) + wide * Math.cos(round), distance * Math.sin(turn) + wide * Math.sin(round)));
        }
        return flan.pierced(hole);
    }

    /** The largest piece of the area, its edge at steps of no more than 0.01. */
    private static Flan of(Shape area) {
        List<List<Corner>> rings = new ArrayList<>();
        double[] spot = new double[6];
        for (PathIterator path = new FlatteningPathIterator(area.getPathIterator(null), 0.0005, 14); !path.isDone(); path.next()) {
            int kind = path.currentSegment(spot);
            if (kind == PathIterator.SEG_MOVETO) {
                rings.add(new ArrayList<>());
            }
            if (kind != PathIterator.SEG_CLOSE) {
                rings.get(rings.size() - 1).add(new Corner(spot[0], spot[1]));
            }
        }
        rings.sort((one, other) -> Double.compare(new Flan(other, List.of()).area(), new Flan(one, List.of()).area()));
        return new Flan(rings.get(0), List.of());
    }
}
