package exergue.demo;

import static exergue.demo.Graver.corners;
import static exergue.demo.Graver.oval;
import static exergue.demo.Graver.through;

/** Whole figures, each in a square from -1 to 1: limbs as they taper, cloth by its folds. */
final class Figures {

    private Figures() { }

    /** A small head looking left. */
    private static void head(Graver g, double x, double y, boolean bearded, boolean bun) {
        g.over(head -> {
            head.dome(through(true, x - 0.085, y - 0.02, x - 0.055, y - 0.095, x + 0.03, y - 0.115, x + 0.095, y - 0.05, x + 0.085, y + 0.05, x + 0.03, y + 0.11,
                    x - 0.05, y + 0.10, x - 0.075, y + 0.055, x - 0.112, y + 0.030), 0.07, 0.06);
            head.tube(new double[] {0.10, 0.09, 0.11}, 0.055, x + 0.02, y + 0.06, x + 0.03, y + 0.14, x + 0.03, y + 0.20);
        });
        g.over(hair -> {
            for (int i = 0; i < 6; i++) {
                hair.lock(x - 0.05 + i * 0.02, y - 0.10 + i * 0.012, 20 + i * 14, 0.13, 0.05, 70, 0.022);
            }
            if (bun) {
                hair.dot(x + 0.125, y + 0.01, 0.048, 0.05);
            }
            if (bearded) {
                hair.tube(new double[] {0.07, 0.09, 0.03}, 0.05, x - 0.03, y + 0.06, x - 0.05, y + 0.12, x - 0.08, y + 0.19);
                hair.tube(new double[] {0.05, 0.06, 0.03}, 0.05, x + 0.08, y, x + 0.10, y + 0.08, x + 0.08, y + 0.15);
            }
        });
        g.swell(x - 0.05, y - 0.005, 0.012, 0.010, 0, -0.020);
    }

    private static void torso(Graver g, double x, double y, double lean) {
        Graver body = g.at(x, y, 1, lean);
        body.over(t -> t.dome(through(true, -0.19, -0.20, 0.0, -0.25, 0.19, -0.20, 0.17, 0.02, 0.13, 0.22, 0.15, 0.34, -0.15, 0.34, -0.13, 0.20, -0.17, 0.0), 0.075, 0.12));
        body.swell(-0.075, -0.10, 0.055, 0.045, 0, 0.022);
        body.swell(0.075, -0.10, 0.055, 0.045, 0, 0.022);
        body.groove(0.018, 0.016, 0, -0.18, 0, 0.0, 0, 0.26);
        body.groove(0.016, 0.012, -0.11, -0.04, 0, 0.00, 0.11, -0.04);
        body.groove(0.014, 0.010, -0.09, 0.10, 0, 0.12, 0.09, 0.10);
    }

    /** Artemis standing left, resting on a spear and holding a small heron. */
    static void standingGoddess(Graver g) {
        g.over(spear -> spear.line(0.032, 0.04, 0.44, -0.95, 0.42, 0, 0.40, 0.90));
        dress(g, 0);
        g.over(arms -> {
            arms.tube(new double[] {0.11, 0.085, 0.06}, 0.06, -0.14, -0.36, -0.28, -0.14, -0.50, -0.16);
            arms.tube(new double[] {0.11, 0.085, 0.06}, 0.06, 0.16, -0.38, 0.34, -0.24, 0.43, -0.46);
            arms.dot(0.43, -0.48, 0.05, 0.05);
        });
        g.over(bird -> Creatures.heron(bird.at(-0.60, -0.34, 0.26, 0), false));
        head(g, -0.02, -0.66, false, true);
    }

    /** Artemis advancing right with a torch, a heron at her feet. */
    static void advancingGoddess(Graver g) {
        Graver right = g.flipped();
        dress(right, -0.16);
        right.over(arms -> {
            arms.tube(new double[] {0.11, 0.085, 0.06}, 0.06, -0.14, -0.36, -0.36, -0.30, -0.50, -0.46);
            arms.tube(new double[] {0.11, 0.085, 0.06}, 0.06, 0.14, -0.36, 0.32, -0.18, 0.46, -0.06);
            arms.line(0.055, 0.055, -0.40, -0.10, -0.50, -0.46, -0.56, -0.70);
            arms.tube(new double[] {0.08, 0.14, 0.03}, 0.06, -0.56, -0.68, -0.60, -0.84, -0.54, -0.98);
        });
        right.over(bird -> Creatures.heron(bird.at(-0.58, 0.55, 0.34, 0), false));
        head(right, -0.04, -0.66, false, true);
    }

    private static void dress(Graver g, double stride) {
        g.over(cloth -> cloth.dome(through(true, -0.17, -0.44, 0.02, -0.48, 0.19, -0.44, 0.16, -0.14, 0.22, 0.20, 0.30, 0.80, 0.12, 0.86, -0.06, 0.82,
                -0.24 + stride, 0.84, -0.24 + stride * 0.6, 0.30, -0.17, -0.12), 0.072, 0.10));
        for (int i = 0; i < 8; i++) {
            double x = -0.17 + i * 0.052;
            double spread = (i - 3.2) * 0.062 + stride * Math.max(0, 3 - i) / 3;
            g.rib(new double[] {0.018, 0.034, 0.030}, 0.024, x * 0.8, -0.06, x + (spread - x) * 0.4, 0.30, spread, 0.80);
        }
        g.rib(new double[] {0.03, 0.035, 0.03}, 0.026, -0.15, -0.12, 0.0, -0.09, 0.15, -0.13);
        g.rib(new double[] {0.03, 0.045, 0.02}, 0.022, 0.17, -0.40, 0.02, -0.24, -0.14, -0.15);
        g.rib(new double[] {0.02, 0.030, 0.02}, 0.020, -0.14, -0.38, -0.04, -0.30, 0.06, -0.38);
        g.swell(-0.07, -0.26, 0.05, 0.05, 0, 0.018);
        g.swell(0.07, -0.26, 0.05, 0.05, 0, 0.018);
        g.over(feet -> {
            feet.tube(new double[] {0.06, 0.06, 0.03}, 0.05, -0.10 + stride, 0.85, -0.20 + stride, 0.88, -0.28 + stride, 0.89);
            feet.tube(new double[] {0.06, 0.06, 0.03}, 0.05, 0.16, 0.85, 0.08, 0.88, 0.00, 0.89);
        });
    }

    /** Poseidon striding right, brandishing a trident. */
    static void striding(Graver g) {
        Graver right = g.flipped();
        right.over(legs -> {
            legs.tube(new double[] {0.20, 0.15, 0.08}, 0.07, -0.06, 0.14, -0.32, 0.40, -0.40, 0.78);
            legs.tube(new double[] {0.20, 0.14, 0.08}, 0.07, 0.08, 0.14, 0.30, 0.44, 0.52, 0.76);
            legs.tube(new double[] {0.07, 0.06, 0.03}, 0.05, -0.40, 0.78, -0.48, 0.82, -0.56, 0.83);
            legs.tube(new double[] {0.07, 0.06, 0.03}, 0.05, 0.52, 0.76, 0.46, 0.82, 0.40, 0.84);
        });
        torso(right, 0, -0.12, -6);
        right.over(arms -> {
            arms.tube(new double[] {0.12, 0.09, 0.06}, 0.07, -0.16, -0.32, -0.42, -0.34, -0.66, -0.40);
            arms.tube(new double[] {0.12, 0.09, 0.06}, 0.07, 0.18, -0.32, 0.44, -0.26, 0.40, -0.52);
            arms.line(0.045, 0.055, 0.92, -0.50, 0.40, -0.54, -0.30, -0.60);
            arms.line(0.04, 0.05, -0.30, -0.70, -0.40, -0.60, -0.30, -0.50);
            for (int i = -1; i <= 1; i++) {
                arms.tube(new double[] {0.035, 0.04, 0.02}, 0.05, -0.34, -0.60 + i * 0.10, -0.48, -0.61 + i * 0.11, -0.62, -0.62 + i * 0.11);
            }
            arms.tube(new double[] {0.06, 0.12, 0.02}, 0.045, -0.60, -0.38, -0.62, -0.10, -0.54, 0.16);
            arms.tube(new double[] {0.05, 0.09, 0.02}, 0.045, 0.34, -0.24, 0.42, 0.02, 0.36, 0.24);
        });
        head(right, -0.03, -0.58, true, false);
    }

    /** Poseidon seated left on a rock, trident upright. */
    static void seated(Graver g) {
        g.over(rock -> {
            rock.dome(through(true, 0.02, 0.30, 0.34, 0.22, 0.54, 0.44, 0.60, 0.82, 0.06, 0.84, -0.04, 0.60), 0.055, 0.08);
            rock.dome(oval(0.40, 0.62, 0.14, 0.12, 20), 0.07, 0.08);
            rock.dome(oval(0.16, 0.70, 0.12, 0.10, 0), 0.07, 0.08);
        });
        g.over(staff -> {
            staff.line(0.036, 0.05, -0.52, -0.55, -0.52, 0.10, -0.52, 0.84);
            for (int i = -1; i <= 1; i++) {
                staff.tube(new double[] {0.035, 0.05, 0.02}, 0.05, -0.52 + i * 0.11, -0.56, -0.52 + i * 0.12, -0.74, -0.52 + i * 0.11, -0.94);
            }
            staff.line(0.04, 0.05, -0.63, -0.60, -0.52, -0.52, -0.41, -0.60);
        });
        torso(g, 0.14, -0.10, 6);
        g.over(legs -> {
            legs.tube(new double[] {0.22, 0.19, 0.14}, 0.08, 0.14, 0.22, -0.10, 0.24, -0.30, 0.26);
            legs.tube(new double[] {0.15, 0.13, 0.07}, 0.075, -0.30, 0.26, -0.28, 0.54, -0.34, 0.80);
            legs.tube(new double[] {0.16, 0.13, 0.07}, 0.065, -0.16, 0.34, -0.10, 0.58, -0.16, 0.82);
            legs.tube(new double[] {0.06, 0.06, 0.03}, 0.05, -0.34, 0.80, -0.42, 0.83, -0.50, 0.84);
            legs.tube(new double[] {0.12, 0.10, 0.06}, 0.07, -0.02, -0.28, -0.30, -0.14, -0.50, -0.28);
            legs.tube(new double[] {0.12, 0.10, 0.06}, 0.07, 0.32, -0.26, 0.44, 0.00, 0.40, 0.24);
        });
        for (int i = 0; i < 5; i++) {
            g.rib(new double[] {0.02, 0.04, 0.02}, 0.022, 0.26 - i * 0.05, 0.18 + i * 0.02, 0.06 - i * 0.05, 0.32 + i * 0.05, -0.14 + i * 0.02, 0.36 + i * 0.08);
        }
        head(g, 0.10, -0.58, true, false);
    }

    /** The river-god reclining left on his urn, a reed in his hand. */
    static void reclining(Graver g) {
        g.over(urn -> Things.urn(urn.at(0.52, 0.44, 0.40, 8)));
        g.over(legs -> {
            legs.tube(new double[] {0.24, 0.20, 0.14}, 0.08, 0.22, 0.30, -0.10, 0.26, -0.36, 0.18);
            legs.tube(new double[] {0.16, 0.13, 0.08}, 0.075, -0.36, 0.18, -0.50, 0.36, -0.74, 0.50);
            legs.tube(new double[] {0.20, 0.15, 0.08}, 0.065, 0.14, 0.42, -0.30, 0.48, -0.86, 0.56);
            legs.tube(new double[] {0.05, 0.05, 0.03}, 0.05, -0.74, 0.50, -0.84, 0.46, -0.90, 0.40);
        });
        torso(g, 0.26, 0.02, 26);
        g.over(arms -> {
            arms.tube(new double[] {0.12, 0.09, 0.06}, 0.07, 0.18, -0.18, -0.06, -0.10, -0.28, -0.22);
            arms.tube(new double[] {0.12, 0.10, 0.06}, 0.07, 0.50, -0.10, 0.62, 0.12, 0.50, 0.28);
        });
        for (int i = 0; i < 6; i++) {
            g.rib(new double[] {0.02, 0.04, 0.02}, 0.022, 0.22 - i * 0.05, 0.22 + i * 0.02, -0.02 - i * 0.08, 0.30 + i * 0.03, -0.22 - i * 0.09, 0.34 + i * 0.03);
        }
        g.over(reed -> Plants.reed(reed.at(-0.36, -0.36, 0.48, -8), 0.12));
        head(g, 0.40, -0.38, true, false);
        g.over(ground -> ground.line(0.035, 0.035, -0.92, 0.70, 0, 0.70, 0.92, 0.70));
    }

    /** A ploughman with a yoke of oxen, left. */
    static void ploughman(Graver g) {
        g.over(far -> Creatures.ox(far.at(-0.20, 0.08, 0.62, 0)));
        g.over(near -> Creatures.ox(near.at(-0.34, 0.20, 0.62, 0)));
        g.over(yoke -> yoke.line(0.04, 0.05, -0.62, 0.02, -0.1, 0.10, 0.34, 0.44));
        g.over(plough -> {
            plough.tube(new double[] {0.05, 0.08, 0.05}, 0.055, 0.02, 0.66, 0.26, 0.62, 0.40, 0.56);
            plough.tube(new double[] {0.06, 0.05, 0.04}, 0.055, 0.38, 0.58, 0.54, 0.30, 0.56, 0.12);
        });
        g.over(man -> {
            man.dome(corners(0.58, -0.16, 0.82, -0.16, 0.86, 0.30, 0.54, 0.30), 0.06, 0.08);
            man.tube(new double[] {0.11, 0.08, 0.06}, 0.055, 0.64, 0.28, 0.58, 0.46, 0.60, 0.68);
            man.tube(new double[] {0.11, 0.08, 0.06}, 0.055, 0.76, 0.28, 0.84, 0.46, 0.86, 0.68);
            man.tube(new double[] {0.09, 0.07, 0.05}, 0.06, 0.62, -0.10, 0.52, 0.02, 0.56, 0.14);
        });
        head(g, 0.70, -0.34, false, false);
        g.over(ground -> ground.line(0.035, 0.035, -0.92, 0.72, 0, 0.72, 0.92, 0.72));
    }
}
