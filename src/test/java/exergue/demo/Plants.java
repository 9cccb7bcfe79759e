package exergue.demo;

import static exergue.demo.Graver.band;
import static exergue.demo.Graver.oval;
import static exergue.demo.Graver.through;

import java.awt.Shape;

/** Leaves, ears and fruit, each in a square from -1 to 1. */
final class Plants {

    private Plants() { }

    /** @param tall times the usual height, for small leaves that must not tower */
    static void vineLeaf(Graver g, double tall) {
        Shape blade = through(true, 0, -0.92, 0.13, -0.62, 0.30, -0.56, 0.34, -0.44, 0.62, -0.62, 0.66, -0.42, 0.92, -0.34, 0.74, -0.14,
                0.78, 0.06, 0.56, 0.10, 0.66, 0.34, 0.42, 0.40, 0.28, 0.60, 0.10, 0.34, 0, 0.22, -0.10, 0.34, -0.28, 0.60, -0.42, 0.40,
                -0.66, 0.34, -0.56, 0.10, -0.78, 0.06, -0.74, -0.14, -0.92, -0.34, -0.66, -0.42, -0.62, -0.62, -0.34, -0.44, -0.30, -0.56, -0.13, -0.62);
        g.dome(blade, 0.085 * tall, 0.10);
        double[][] veins = {{0, -0.84}, {0.70, -0.40}, {-0.70, -0.40}, {0.50, 0.30}, {-0.50, 0.30}};
        for (double[] tip : veins) {
            g.rib(new double[] {0.075, 0.050, 0.02}, 0.034 * tall, 0, 0.20, tip[0] * 0.5, 0.20 + (tip[1] - 0.20) * 0.52, tip[0], tip[1]);
            for (int side = -1; side <= 1; side += 2) {
                double x = tip[0] * 0.55;
                double y = 0.20 + (tip[1] - 0.20) * 0.55;
                double turn = Math.atan2(tip[1] - 0.2, tip[0]) + side * 0.75;
                g.rib(new double[] {0.035, 0.030, 0.015}, 0.020 * tall, x, y, x + 0.11 * Math.cos(turn), y + 0.11 * Math.sin(turn),
                        x + 0.20 * Math.cos(turn), y + 0.20 * Math.sin(turn));
            }
        }
        g.tube(new double[] {0.08, 0.06, 0.075}, 0.070 * tall, 0, 0.22, 0.03, 0.55, 0.16, 0.92);
    }

    static void grapes(Graver g) {
        g.over(leaf -> {
            leaf.tube(new double[] {0.05, 0.06, 0.07}, 0.05, 0, -0.60, 0.02, -0.80, 0.12, -0.95);
            leaf.tube(new double[] {0.03, 0.03, 0.02}, 0.035, 0.02, -0.74, 0.25, -0.86, 0.42, -0.72, 0.34, -0.60);
        });
        int[] row = {3, 5, 6, 5, 5, 4, 3, 2, 1};
        g.over(fruit -> {
            for (int i = 0; i < row.length; i++) {
                for (int k = 0; k < row[i]; k++) {
                    fruit.dot((k - (row[i] - 1) / 2.0) * 0.19 + 0.02 * Math.sin(i * 3 + k), -0.56 + i * 0.165 + 0.02 * Math.cos(k * 2 + i), 0.105, 0.07);
                }
            }
        });
    }

    /** An ear of barley, stalk downwards. */
    static void ear(Graver g) {
        g.tube(new double[] {0.05, 0.045, 0.06}, 0.045, 0, 0.95, 0.02, 0.65, 0, 0.40);
        g.over(beard -> {
            for (int grain = 0; grain < 7; grain++) {
                double y = 0.40 - grain * 0.17;
                for (int side = -1; side <= 1; side += 2) {
                    beard.tube(new double[] {0.035, 0.028, 0.012}, 0.028, side * 0.15, y - 0.08, side * 0.26, y - 0.34, side * 0.30, y - 0.58);
                }
            }
        });
        g.over(grains -> {
            for (int grain = 0; grain < 7; grain++) {
                double y = 0.42 - grain * 0.17;
                grains.dome(oval(0.125, y, 0.062, 0.120, 26), 0.060, 0.07);
                grains.dome(oval(-0.125, y, 0.062, 0.120, -26), 0.060, 0.07);
                grains.dome(oval(0, y - 0.06, 0.052, 0.105, 0), 0.070, 0.06);
            }
        });
        g.over(leaf -> leaf.dome(band(0.045, 0, 0.82, 0.16, 0.62, 0.34, 0.60, 0.46, 0.74), 0.035, 0.02));
    }

    /** A reed bent to the left by the wind. */
    static void reed(Graver g, double bend) {
        g.tube(new double[] {0.07, 0.055, 0.035}, 0.05, 0.10, 0.95, 0.10, 0.30, 0.04 - bend * 0.2, -0.30, -0.10 - bend * 0.6, -0.72);
        g.over(head -> head.tube(new double[] {0.05, 0.13, 0.03}, 0.06, 0.02 - bend * 0.3, -0.46, -0.10 - bend * 0.6, -0.72, -0.20 - bend, -0.90));
        g.over(leaves -> {
            leaves.tube(new double[] {0.06, 0.085, 0.012}, 0.04, 0.10, 0.62, -0.10, 0.20, -0.42 - bend * 0.2, 0.02);
            leaves.tube(new double[] {0.06, 0.080, 0.012}, 0.04, 0.10, 0.40, 0.30 - bend * 0.3, 0.02, 0.42 - bend * 0.9, -0.36);
            leaves.tube(new double[] {0.05, 0.070, 0.012}, 0.04, 0.08, 0.10, -0.14, -0.20, -0.44 - bend * 0.3, -0.28);
        });
    }

    /** A wreath of vine as a border: leaves and bunches by turns. */
    static void wreath(Graver g) {
        g.over(stem -> {
            double[] ring = new double[2 * 37];
            for (int i = 0; i <= 36; i++) {
                double turn = 2 * Math.PI * i / 36;
                double far = 0.88 + 0.015 * Math.sin(turn * 12);
                ring[2 * i] = far * Math.cos(turn);
                ring[2 * i + 1] = far * Math.sin(turn);
            }
            stem.line(0.026, 0.022, ring);
        });
        for (int i = 0; i < 20; i++) {
            double turn = 18.0 * i + 9;
            double x = 0.88 * Math.cos(Math.toRadians(turn));
            double y = 0.88 * Math.sin(Math.toRadians(turn));
            int kind = i % 4;
            g.over(part -> {
                if (kind == 3) {
                    for (int k = 0; k < 6; k++) {
                        part.dot(x + 0.035 * Math.cos(k * 1.05), y + 0.035 * Math.sin(k * 1.05), 0.020, 0.026);
                    }
                } else {
                    vineLeaf(part.at(x, y, 0.115, turn + 115), 0.36);
                }
            });
        }
    }
}
