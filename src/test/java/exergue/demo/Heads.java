package exergue.demo;

import static exergue.demo.Graver.oval;
import static exergue.demo.Graver.through;

import java.awt.Shape;
import java.awt.geom.Area;

/** Heads to the right, invented, in the manner of the trade: profile first, then bone, then hair lock by lock. */
final class Heads {

    private static final double[] PROFILE = {
        -0.05, -0.78, 0.16, -0.70, 0.29, -0.56, 0.365, -0.40, 0.395, -0.29, 0.405, -0.225, 0.445, -0.13, 0.495, -0.035,
        0.525, 0.010, 0.518, 0.040, 0.470, 0.060, 0.440, 0.078, 0.436, 0.105, 0.468, 0.142, 0.470, 0.166, 0.432, 0.184,
        0.452, 0.206, 0.450, 0.236, 0.414, 0.262, 0.410, 0.285, 0.442, 0.325, 0.440, 0.375, 0.395, 0.425, 0.30, 0.435,
        0.19, 0.440, 0.13, 0.475, 0.105, 0.56, 0.115, 0.68, 0.175, 0.80, 0.205, 0.845, 0.08, 0.885, -0.10, 0.905,
        -0.30, 0.890, -0.43, 0.840, -0.40, 0.70, -0.385, 0.52, -0.43, 0.34, -0.50, 0.16, -0.545, -0.08, -0.52, -0.36,
        -0.40, -0.60, -0.24, -0.73};

    private Heads() { }

    /** Face, neck and skull without hair. */
    static void skull(Graver g, boolean bearded) {
        Area face = new Area(through(true, PROFILE));
        face.add(new Area(through(true, CAP)));
        if (bearded) {
            face.add(new Area(through(true, 0.0, 0.1, 0.42, 0.20, 0.475, 0.34, 0.47, 0.46, 0.42, 0.56, 0.28, 0.60, 0.14, 0.55, 0.02, 0.42)));
        }
        g.dome(face, 0.060, 0.045);
        Graver flesh = g.sheet();
        flesh.swell(-0.06, -0.14, 0.34, 0.40, 0, 0.062);
        flesh.swell(0.20, 0.14, 0.13, 0.17, -15, 0.030);
        flesh.swell(0.08, 0.30, 0.20, 0.09, -22, 0.022);
        flesh.swell(0.36, 0.36, 0.055, 0.06, 0, 0.022);
        flesh.swell(-0.12, 0.72, 0.20, 0.22, 0, 0.030);
        flesh.swell(0.16, 0.52, 0.14, 0.045, -12, -0.040);
        flesh.swell(0.26, -0.42, 0.16, 0.13, -40, 0.016);
        g.putWithin(flesh, face);
        g.rib(new double[] {0.14, 0.20, 0.12}, 0.014, -0.16, 0.30, -0.05, 0.55, 0.06, 0.80);
        features(g);
    }

    private static void features(Graver g) {
        g.swell(0.345, -0.160, 0.055, 0.040, 10, -0.030);
        g.swell(0.375, -0.270, 0.065, 0.022, 15, 0.014);
        g.swell(0.335, -0.150, 0.030, 0.024, 10, 0.030);
        g.rib(new double[] {0.010, 0.020, 0.016}, 0.018, 0.268, -0.150, 0.325, -0.190, 0.385, -0.158);
        g.rib(new double[] {0.008, 0.014, 0.010}, 0.012, 0.275, -0.138, 0.330, -0.112, 0.375, -0.132);
        g.groove(0.016, 0.012, 0.250, -0.205, 0.330, -0.235, 0.395, -0.205);
        g.rib(new double[] {0.03, 0.04, 0.03}, 0.012, 0.24, -0.235, 0.32, -0.268, 0.40, -0.245);
        g.swell(0.352, -0.152, 0.008, 0.008, 0, -0.010);
        g.rib(new double[] {0.05, 0.060, 0.07}, 0.020, 0.395, -0.24, 0.435, -0.12, 0.485, -0.01);
        g.swell(0.495, 0.015, 0.026, 0.024, 0, 0.016);
        g.swell(0.440, 0.030, 0.026, 0.024, 0, 0.022);
        g.groove(0.012, 0.014, 0.405, 0.02, 0.415, 0.055, 0.445, 0.062);
        g.groove(0.020, 0.010, 0.39, 0.06, 0.375, 0.12, 0.375, 0.16);
        g.rib(new double[] {0.008, 0.032, 0.024}, 0.016, 0.385, 0.178, 0.43, 0.155, 0.468, 0.160);
        g.rib(new double[] {0.008, 0.034, 0.024}, 0.016, 0.385, 0.192, 0.42, 0.222, 0.450, 0.222);
        g.groove(0.012, 0.018, 0.372, 0.188, 0.41, 0.184, 0.455, 0.184);
        g.swell(0.40, 0.275, 0.030, 0.014, 0, -0.012);
    }

    static void ear(Graver g, double x, double y) {
        Graver ear = g.sheet();
        ear.dome(oval(x, y, 0.058, 0.090, 12), 0.030, 0.03);
        g.put(ear);
        g.swell(x + 0.006, y - 0.005, 0.022, 0.042, 12, -0.030);
        g.rib(new double[] {0.012, 0.022, 0.020}, 0.014, x + 0.03, y + 0.0, x + 0.035, y - 0.06, x - 0.01, y - 0.088,
                x - 0.055, y - 0.03, x - 0.035, y + 0.05);
        g.swell(x + 0.004, y + 0.078, 0.020, 0.020, 0, 0.014);
        g.swell(x + 0.030, y + 0.012, 0.010, 0.016, 0, 0.014);
    }

    private static final double[] CAP = {
        0.30, -0.60, 0.33, -0.47, 0.24, -0.36, 0.12, -0.24, 0.05, -0.08, 0.03, 0.10, -0.04, 0.16, -0.16, 0.24, -0.22, 0.50,
        -0.34, 0.60, -0.48, 0.54, -0.56, 0.30, -0.61, 0.02, -0.61, -0.26, -0.50, -0.56, -0.30, -0.76, -0.04, -0.82, 0.18, -0.74};

    /** Short hair in rows of crescent locks that fall from the crown to brow, temple and nape. */
    static void shortHair(Graver g, double shift) {
        Graver hair = g.sheet();
        for (int row = 0; row < 5; row++) {
            double far = 0.05 + row * 0.085;
            int count = 5 + row * 4;
            for (int i = 0; i < count; i++) {
                double turn = -28 - (i + (row % 2) * 0.5) * 236.0 / count + 7 * Math.sin(i * 2.3 + row + shift);
                double x = -0.12 + far * 1.02 * Math.cos(Math.toRadians(turn));
                double y = -0.27 + far * 1.06 * Math.sin(Math.toRadians(turn));
                boolean behind = turn < -112;
                double lean = turn + (behind ? -25 : 25) + 12 * Math.sin(i * 1.7 + shift);
                hair.lock(x, y, lean, 0.19 + 0.02 * Math.sin(i + row), 0.082, (behind ? -75 : 75) + 25 * Math.sin(i * 1.3 + row),
                        0.026 + 0.003 * (row % 2));
            }
        }
        g.put(hair);
    }

    /** The fringe above the brow and the locks before the ear and down the nape. */
    static void fringe(Graver g, double shift) {
        Graver hair = g.sheet();
        for (int i = 0; i < 8; i++) {
            double share = i / 7.0;
            double x = 0.305 - share * 0.29;
            double y = -0.53 + share * share * 0.42 - share * 0.02;
            hair.lock(x - 0.03, y - 0.02, 40 + share * 20 + 14 * Math.sin(i * 2.1 + shift), 0.15, 0.078, 85, 0.040);
        }
        for (int i = 0; i < 6; i++) {
            double y = 0.08 + i * 0.065;
            hair.lock(-0.16 - i * 0.022, y, 128 + 12 * Math.sin(i * 1.3 + shift), 0.17, 0.078, -70, 0.034);
            hair.lock(-0.30 - i * 0.016, y - 0.03, 122 + 10 * Math.sin(i * 1.9 + shift), 0.17, 0.078, -60, 0.034);
            hair.lock(-0.42 - i * 0.006, y - 0.07, 116 + 10 * Math.sin(i * 2.9 + shift), 0.16, 0.076, -50, 0.032);
        }
        g.put(hair);
    }

    static void diadem(Graver g) {
        double[] way = {0.345, -0.450, 0.20, -0.475, 0.0, -0.425, -0.25, -0.285, -0.53, -0.08};
        Graver band = g.sheet();
        band.dome(Graver.band(0.074, way), 0.050, 0.018);
        g.put(band);
        g.groove(0.014, 0.012, 0.345, -0.432, 0.20, -0.455, 0.0, -0.405, -0.25, -0.265, -0.52, -0.06);
        g.groove(0.014, 0.012, 0.345, -0.468, 0.20, -0.495, 0.0, -0.445, -0.25, -0.305, -0.53, -0.10);
        Graver ends = g.sheet();
        ends.dome(Graver.band(0.055, -0.53, -0.05, -0.58, 0.10, -0.55, 0.26, -0.60, 0.44), 0.045, 0.02);
        ends.dome(Graver.band(0.062, -0.54, -0.07, -0.66, 0.05, -0.68, 0.22, -0.63, 0.38, -0.69, 0.54), 0.055, 0.02);
        ends.dome(oval(-0.54, -0.065, 0.050, 0.046, 40), 0.075, 0.035);
        g.put(ends);
        g.groove(0.012, 0.012, -0.56, -0.05, -0.65, 0.06, -0.67, 0.22, -0.62, 0.38, -0.68, 0.53);
    }

    /** A band of leaves in pairs from the brow to the nape, tied behind. */
    static void laurel(Graver g) {
        for (int i = 0; i < 8; i++) {
            double share = i / 7.0;
            double x = 0.31 - share * 0.84;
            double y = -0.475 + 0.02 * Math.sin(share * 3) + share * share * 0.40;
            double lean = -6 - share * 34;
            g.over(leaf -> {
                leaf.dome(Graver.oval(x, y - 0.045, 0.088, 0.030, lean + 28), 0.046, 0.022);
                leaf.dome(Graver.oval(x - 0.02, y + 0.035, 0.088, 0.030, lean - 24), 0.046, 0.022);
            });
        }
        ties(g);
    }

    /** A wreath of vine leaves with a small bunch at the ear. */
    static void vineWreath(Graver g) {
        g.over(stem -> stem.line(0.022, 0.03, 0.34, -0.45, 0.20, -0.475, 0.0, -0.425, -0.25, -0.285, -0.53, -0.08));
        for (int i = 0; i < 6; i++) {
            double share = i / 5.0;
            double x = 0.26 - share * 0.72;
            double y = -0.50 + share * share * 0.36;
            double lean = 30 * Math.sin(i * 2.1) - 20 - share * 40;
            g.over(leaf -> Plants.vineLeaf(leaf.at(x, y, 0.17, lean), 0.30));
        }
        ties(g);
    }

    /** Weeds of the sea, long and slack, in place of leaves. */
    static void seaweed(Graver g) {
        for (int i = 0; i < 7; i++) {
            double share = i / 6.0;
            double x = 0.27 - share * 0.76;
            double y = -0.50 + share * share * 0.38;
            g.over(weed -> {
                weed.tube(new double[] {0.03, 0.055, 0.015}, 0.042, x, y, x - 0.06, y - 0.09, x - 0.15, y - 0.05, x - 0.20, y - 0.12);
                weed.tube(new double[] {0.03, 0.050, 0.015}, 0.040, x, y, x - 0.09, y + 0.04, x - 0.14, y + 0.00, x - 0.21, y + 0.05);
            });
        }
        ties(g);
    }

    private static void ties(Graver g) {
        g.over(ends -> {
            ends.dome(Graver.band(0.042, -0.53, -0.05, -0.60, 0.08, -0.57, 0.24, -0.62, 0.40), 0.042, 0.02);
            ends.dome(Graver.band(0.042, -0.54, -0.07, -0.66, 0.03, -0.69, 0.18, -0.66, 0.32), 0.048, 0.02);
            ends.dome(oval(-0.54, -0.06, 0.042, 0.040, 40), 0.062, 0.03);
        });
    }

    /** Long locks that lie on the neck, for gods. */
    static void longLocks(Graver g) {
        g.over(hair -> {
            for (int i = 0; i < 5; i++) {
                double x = -0.18 - i * 0.065;
                hair.tube(new double[] {0.07, 0.075, 0.02}, 0.045, x, 0.18 - i * 0.03, x - 0.05, 0.34, x + 0.03, 0.48, x - 0.04, 0.62, x + 0.02, 0.72 - i * 0.02);
                hair.tube(new double[] {0.03, 0.035, 0.02}, 0.050, x + 0.03, 0.20 - i * 0.03, x - 0.02, 0.34, x + 0.055, 0.48, x - 0.01, 0.62);
            }
        });
    }

    /** Waves of a woman's hair from the brow back to a knot. */
    static void knot(Graver g) {
        waves(g);
        bun(g);
    }

    private static void waves(Graver g) {
        g.over(hair -> {
            for (int i = 0; i < 12; i++) {
                double share = i / 11.0;
                double x = 0.30 - share * 0.36;
                double y = -0.56 + share * share * 0.62;
                double toX = -0.56;
                double toY = -0.10 + share * 0.14;
                double[] way = new double[18];
                for (int k = 0; k < 9; k++) {
                    double along = k / 8.0;
                    double bow = Math.sin(Math.PI * along) * (0.22 - 0.42 * share);
                    way[2 * k] = x + (toX - x) * along;
                    way[2 * k + 1] = y + (toY - y) * along - bow + 0.016 * Math.sin(along * 19 + i * 0.6);
                }
                hair.tube(new double[] {0.050, 0.066, 0.040}, 0.036, way);
                hair.tube(new double[] {0.018, 0.024, 0.016}, 0.042, way);
            }
            for (int i = 0; i < 6; i++) {
                hair.lock(-0.10 - i * 0.05, -0.74 + i * 0.075, 160 - i * 16, 0.26, 0.085, -45, 0.032);
            }
        });
    }

    private static void bun(Graver g) {
        g.over(bun -> {
            bun.dome(oval(-0.62, -0.02, 0.135, 0.120, 10), 0.075, 0.10);
            bun.dome(oval(-0.74, 0.03, 0.06, 0.055, 10), 0.05, 0.05);
        });
        for (int i = -2; i <= 2; i++) {
            g.groove(0.016, 0.014, -0.52 + 0.012 * i, -0.05 + i * 0.045, -0.62, -0.02 + i * 0.052, -0.735, 0.00 + i * 0.035);
        }
        g.over(wisp -> wisp.tube(new double[] {0.03, 0.03, 0.012}, 0.03, -0.30, 0.20, -0.27, 0.32, -0.33, 0.42, -0.30, 0.50));
    }

    static void necklace(Graver g) {
        g.over(beads -> {
            for (int i = 0; i < 9; i++) {
                double share = i / 8.0;
                beads.dot(-0.36 + share * 0.50, 0.70 + 0.09 * Math.sin(share * 3.0) - share * 0.02, 0.022, 0.024);
            }
        });
    }

    static void earring(Graver g) {
        g.over(drop -> {
            drop.dot(-0.075, 0.115, 0.020, 0.030);
            drop.dome(Graver.corners(-0.075, 0.12, -0.045, 0.21, -0.105, 0.21), 0.028, 0.02);
        });
    }

    /** A veil drawn over the back of the head, and a stephane above the brow. */
    static void veil(Graver g) {
        Shape cloth = through(true, 0.06, -0.90, 0.12, -0.72, 0.04, -0.50, -0.10, -0.25, -0.14, 0.02, -0.18, 0.30, -0.20, 0.60, -0.14, 0.88,
                -0.34, 0.97, -0.62, 0.86, -0.66, 0.50, -0.74, 0.20, -0.74, -0.16, -0.66, -0.50, -0.46, -0.78, -0.18, -0.93);
        g.cover(cloth, 0.165, 0.10);
        for (int i = 0; i < 6; i++) {
            double off = i * 0.085;
            g.rib(new double[] {0.012, 0.040, 0.030}, 0.022, 0.02 - off * 0.7, -0.84 + off * 0.3, -0.16 - off * 0.85, -0.46 + off * 0.2,
                    -0.24 - off * 0.8, 0.00, -0.28 - off * 0.62, 0.45, -0.24 - off * 0.60, 0.88);
        }
        g.rib(new double[] {0.03, 0.045, 0.045}, 0.022, 0.09, -0.80, 0.05, -0.55, -0.08, -0.26, -0.12, 0.02, -0.16, 0.30, -0.18, 0.60, -0.13, 0.86);
        g.over(crown -> crown.dome(Graver.corners(0.345, -0.50, 0.30, -0.70, 0.16, -0.86, 0.02, -0.90, 0.00, -0.80, 0.14, -0.66, 0.24, -0.52), 0.05, 0.03));
        g.rib(new double[] {0.02, 0.025, 0.02}, 0.018, 0.33, -0.52, 0.21, -0.62, 0.02, -0.79);
        for (int i = 0; i < 5; i++) {
            g.swell(0.285 - i * 0.058, -0.64 - i * 0.045 + i * i * 0.004, 0.013, 0.013, 0, 0.024);
        }
    }

    /** Full face of the kinds that the types ask for. */
    static void king(Graver g, boolean bearded, double shift) {
        skull(g, bearded);
        ear(g, -0.08, 0.0);
        shortHair(g, shift);
        fringe(g, shift);
        if (bearded) {
            beard(g, shift);
        }
        diadem(g);
    }

    static void god(Graver g, java.util.function.Consumer<Graver> crown, double shift) {
        skull(g, true);
        ear(g, -0.08, 0.0);
        shortHair(g, shift);
        fringe(g, shift);
        longLocks(g);
        beard(g, shift);
        crown.accept(g);
    }

    static void goddess(Graver g) {
        skull(g, false);
        ear(g, -0.08, 0.0);
        knot(g);
        earring(g);
        necklace(g);
    }

    static void queen(Graver g) {
        skull(g, false);
        ear(g, -0.08, 0.0);
        waves(g);
        earring(g);
        veil(g);
    }

    /** Work of a hand that had seen a good coin once: large eye, hair in beads, a beard in lines. */
    static void crude(Graver g, boolean bearded) {
        skull(g, bearded);
        g.over(eye -> eye.dome(oval(0.30, -0.14, 0.085, 0.055, 8), 0.040, 0.03));
        g.groove(0.018, 0.020, 0.215, -0.14, 0.30, -0.205, 0.39, -0.13);
        g.groove(0.018, 0.020, 0.215, -0.13, 0.30, -0.075, 0.39, -0.12);
        ear(g, -0.06, 0.02);
        g.over(hair -> {
            for (int row = 0; row < 5; row++) {
                for (int i = 0; i < 6 + row * 3; i++) {
                    double turn = Math.toRadians(-20 - i * 230.0 / (6 + row * 3));
                    double far = 0.10 + row * 0.10;
                    hair.dot(-0.12 + far * Math.cos(turn), -0.27 + far * 1.05 * Math.sin(turn), 0.058, 0.036);
                }
            }
            for (int i = 0; i < 12; i++) {
                hair.dot(-0.20 - 0.10 * (i % 3), 0.14 + 0.10 * (i / 3), 0.056, 0.040);
            }
        });
        if (bearded) {
            g.over(beard -> {
                for (int i = 0; i < 9; i++) {
                    double x = 0.02 + i * 0.050;
                    beard.tube(new double[] {0.035, 0.045, 0.02}, 0.042, x, 0.20 + i * 0.012, x + 0.03, 0.34, x + 0.02, 0.46 + 0.05 * Math.sin(i * 0.4));
                }
            });
        }
        diadem(g);
    }

    static void beard(Graver g, double shift) {
        Graver beard = g.sheet();
        for (int row = 4; row >= 0; row--) {
            int count = 8 - row;
            for (int i = 0; i < count; i++) {
                double share = (i + 0.5 * (row % 2)) / 7.0;
                double x = 0.02 + share * 0.36 + row * 0.022;
                double y = 0.17 + row * 0.070 + (1 - share) * -0.02 + 0.11 * share * (1 - row * 0.12);
                beard.lock(x, y, 84 - 34 * (share - 0.5) + 16 * Math.sin(i * 2.2 + row * 1.3 + shift), 0.17, 0.076,
                        (i + row) % 2 == 0 ? 105 : -85, 0.040 + 0.002 * row);
            }
        }
        for (int i = 0; i < 4; i++) {
            beard.lock(-0.01 + i * 0.012, 0.06 + i * 0.05, 70, 0.13, 0.066, 75, 0.034);
        }
        g.put(beard);
        g.rib(new double[] {0.040, 0.050, 0.016}, 0.034, 0.460, 0.125, 0.40, 0.142, 0.340, 0.225);
    }
}
