package exergue.demo;

import static exergue.demo.Graver.corners;
import static exergue.demo.Graver.oval;
import static exergue.demo.Graver.through;

import java.awt.geom.Rectangle2D;

/** Things made by hands, each in a square from -1 to 1. */
final class Things {

    private Things() { }

    static void bell(Graver g) {
        g.dome(through(true, 0, -0.62, 0.24, -0.54, 0.34, -0.20, 0.42, 0.30, 0.66, 0.58, 0.60, 0.68, 0, 0.72, -0.60, 0.68, -0.66, 0.58, -0.42, 0.30,
                -0.34, -0.20, -0.24, -0.54), 0.10, 0.30);
        g.rib(new double[] {0.06, 0.08, 0.06}, 0.03, -0.60, 0.60, 0, 0.64, 0.60, 0.60);
        g.groove(0.035, 0.02, -0.40, 0.32, 0, 0.36, 0.40, 0.32);
        g.groove(0.035, 0.02, -0.30, -0.40, 0, -0.36, 0.30, -0.40);
        g.over(top -> {
            top.line(0.085, 0.06, -0.12, -0.60, -0.16, -0.86, 0, -0.94, 0.16, -0.86, 0.12, -0.60);
            top.dot(0, 0.80, 0.11, 0.07);
        });
    }

    static void star(Graver g) {
        for (int ray = 0; ray < 8; ray++) {
            double turn = Math.PI * ray / 4;
            g.tube(new double[] {0.30, 0.22, 0.06}, 0.075, 0.05 * Math.cos(turn), 0.05 * Math.sin(turn), 0.9 * Math.cos(turn), 0.9 * Math.sin(turn));
        }
        g.dot(0, 0, 0.24, 0.10);
    }

    static void crescent(Graver g) {
        java.awt.geom.Area moon = new java.awt.geom.Area(oval(0, 0, 0.8, 0.8, 0));
        moon.subtract(new java.awt.geom.Area(oval(0, -0.36, 0.72, 0.72, 0)));
        g.dome(moon, 0.09, 0.2);
    }

    /** A lamp with its spout to the left and a flame. */
    static void lamp(Graver g) {
        g.dome(through(true, -0.10, -0.28, 0.40, -0.26, 0.64, 0.04, 0.44, 0.36, 0.0, 0.42, -0.40, 0.30, -0.86, 0.04, -0.84, -0.14, -0.50, -0.10), 0.10, 0.25);
        g.over(parts -> {
            parts.line(0.12, 0.06, 0.54, -0.14, 0.86, -0.34, 0.92, -0.02, 0.62, 0.14);
            parts.tube(new double[] {0.16, 0.18, 0.03}, 0.07, -0.80, -0.16, -0.84, -0.44, -0.74, -0.78);
            parts.dome(oval(0.0, 0.48, 0.28, 0.07, 0), 0.05, 0.06);
        });
        g.swell(0.08, -0.06, 0.16, 0.10, 0, -0.05);
    }

    static void amphora(Graver g) {
        g.dome(through(true, -0.12, -0.86, 0.12, -0.86, 0.11, -0.52, 0.38, -0.28, 0.36, 0.14, 0.14, 0.62, 0.10, 0.92, -0.10, 0.92, -0.14, 0.62, -0.36, 0.14,
                -0.38, -0.28, -0.11, -0.52), 0.11, 0.25);
        g.over(handles -> {
            handles.line(0.085, 0.06, 0.13, -0.78, 0.36, -0.80, 0.42, -0.56, 0.32, -0.34);
            handles.line(0.085, 0.06, -0.13, -0.78, -0.36, -0.80, -0.42, -0.56, -0.32, -0.34);
            handles.line(0.10, 0.05, -0.18, -0.88, 0.18, -0.88);
            handles.line(0.09, 0.05, -0.16, 0.92, 0.16, 0.92);
        });
        g.groove(0.05, 0.03, -0.36, -0.10, 0, -0.04, 0.36, -0.10);
    }

    /** Two letters drawn into one: an upright with strokes as given, each x, y, x, y. */
    static void monogram(Graver g, double[]... strokes) {
        for (double[] stroke : strokes) {
            g.line(0.16, 0.075, stroke);
        }
    }

    static void monogramAlphaRho(Graver g) {
        monogram(g, new double[] {0, -0.85, -0.62, 0.85}, new double[] {0, -0.85, 0.62, 0.85}, new double[] {-0.36, 0.25, 0.36, 0.25},
                new double[] {0, -0.85, 0, 0.25}, new double[] {0, -0.85, 0.50, -0.72, 0.50, -0.30, 0.02, -0.18});
    }

    static void monogramEtaUpsilon(Graver g) {
        monogram(g, new double[] {-0.60, -0.85, -0.60, 0.85}, new double[] {0.60, -0.85, 0.60, 0.85}, new double[] {-0.60, 0.05, 0.60, 0.05},
                new double[] {-0.60, -0.80, 0, 0.05}, new double[] {0.60, -0.80, 0, 0.05}, new double[] {0, 0.05, 0, 0.85});
    }

    static void monogramAlphaEta(Graver g) {
        monogram(g, new double[] {-0.60, -0.85, -0.60, 0.85}, new double[] {0.60, -0.85, 0.60, 0.85}, new double[] {-0.60, 0.0, 0.60, 0.0},
                new double[] {-0.60, 0.85, 0, -0.85, 0.60, 0.85});
    }

    static void tower(Graver g, int courses, boolean crude) {
        double top = -0.44;
        double high = 1.20 / courses;
        g.over(wall -> {
            for (int course = 0; course < courses; course++) {
                double y = 0.78 - course * high;
                double half = 0.54 - 0.09 * course / courses;
                int stones = crude ? 3 : 4;
                double shift = course % 2 == 0 ? 0 : half / stones;
                for (int stone = -1; stone < stones; stone++) {
                    double left = Math.max(-half, -half + stone * 2 * half / stones + shift);
                    double right = Math.min(half, -half + (stone + 1) * 2 * half / stones + shift);
                    if (right - left > 0.03) {
                        wall.dome(corners(left + 0.012, y - high + 0.022, right - 0.012, y - high + 0.022, right - 0.012, y, left + 0.012, y), 0.060, 0.045);
                    }
                }
            }
        });
        g.over(crown -> {
            crown.dome(corners(-0.58, top, -0.60, top - 0.12, 0.60, top - 0.12, 0.58, top), 0.075, 0.03);
            for (int tooth = 0; tooth < 4; tooth++) {
                double left = -0.60 + tooth * 0.333;
                crown.dome(new Rectangle2D.Double(left, top - 0.36, 0.20, 0.26), 0.070, 0.03);
            }
        });
        g.over(ground -> ground.line(0.045, 0.04, -0.76, 0.84, 0.0, 0.845, 0.76, 0.84));
    }

    static void door(Graver g) {
        Graver hole = g.sheet();
        hole.slab(through(true, -0.15, 0.79, -0.15, 0.48, 0, 0.34, 0.15, 0.48, 0.15, 0.79), 0.050, 0.008);
        g.field().add(hole.field(), -1);
        g.over(post -> post.line(0.035, 0.03, -0.17, 0.78, -0.17, 0.46, 0, 0.31, 0.17, 0.46, 0.17, 0.78));
    }

    /** Prow of a galley to the right. */
    static void prow(Graver g) {
        g.dome(through(true, -0.90, -0.16, -0.40, -0.12, 0.10, -0.16, 0.34, -0.34, 0.48, -0.40, 0.52, -0.16, 0.60, 0.06, 0.94, 0.20, 0.93, 0.32, 0.60, 0.36,
                0.36, 0.50, 0.00, 0.56, -0.90, 0.58), 0.085, 0.16);
        g.over(parts -> {
            parts.tube(new double[] {0.16, 0.12, 0.07}, 0.075, 0.44, -0.36, 0.60, -0.60, 0.50, -0.80, 0.32, -0.76, 0.36, -0.64);
            parts.dome(corners(-0.90, -0.44, -0.06, -0.40, -0.02, -0.20, -0.90, -0.20), 0.060, 0.05);
            parts.line(0.05, 0.055, -0.90, -0.48, -0.4, -0.45, 0.0, -0.42);
        });
        g.over(shields -> {
            for (int i = 0; i < 5; i++) {
                shields.dome(oval(-0.82 + i * 0.175, -0.31, 0.075, 0.075, 0), 0.040, 0.05);
            }
        });
        for (int wale = 0; wale < 4; wale++) {
            double y = -0.08 + wale * 0.16;
            g.rib(new double[] {0.05, 0.055, 0.04}, 0.024, -0.88, y, -0.20, y + 0.03, 0.30, y + 0.02, 0.62 + wale * 0.06, y + 0.10 - wale * 0.06);
        }
        g.over(eye -> eye.dome(oval(0.34, -0.04, 0.10, 0.065, 8), 0.035, 0.04));
        g.swell(0.35, -0.04, 0.03, 0.03, 0, -0.03);
        g.over(sea -> {
            for (int wave = 0; wave < 7; wave++) {
                double x = -0.92 + wave * 0.26;
                sea.tube(new double[] {0.03, 0.055, 0.02}, 0.035, x, 0.76, x + 0.10, 0.66, x + 0.20, 0.70, x + 0.17, 0.76);
            }
            sea.line(0.03, 0.026, -0.90, 0.80, 0, 0.80, 0.88, 0.80);
        });
    }

    static void trident(Graver g, boolean shaft) {
        double foot = shaft ? 0.92 : 0.62;
        g.tube(new double[] {0.10, 0.085, 0.085}, 0.07, 0, -0.40, 0, 0.2, 0, foot);
        g.over(fork -> {
            fork.line(0.085, 0.070, -0.42, -0.55, -0.44, -0.22, -0.24, -0.08, 0, -0.10, 0.24, -0.08, 0.44, -0.22, 0.42, -0.55);
            for (double prong : new double[] {-0.42, 0, 0.42}) {
                double tip = prong == 0 ? -0.96 : -0.84;
                fork.line(0.07, 0.065, prong, -0.30, prong, tip + 0.2);
                fork.dome(corners(prong, tip, prong + 0.12, tip + 0.30, prong + 0.03, tip + 0.22, prong - 0.03, tip + 0.22, prong - 0.12, tip + 0.30), 0.075, 0.03);
            }
            fork.line(0.12, 0.075, -0.10, 0.02, 0.10, 0.02);
        });
    }

    static void shell(Graver g) {
        g.dome(through(true, 0, 0.78, 0.16, 0.70, 0.22, 0.56, 0.74, 0.16, 0.86, -0.14, 0.74, -0.46, 0.46, -0.70, 0.16, -0.80, -0.16, -0.80, -0.46, -0.70,
                -0.74, -0.46, -0.86, -0.14, -0.74, 0.16, -0.22, 0.56, -0.16, 0.70), 0.085, 0.22);
        for (int ray = -5; ray <= 5; ray++) {
            double turn = Math.toRadians(ray * 14.5);
            double reach = 1.36 - 0.010 * ray * ray;
            g.rib(new double[] {0.02, 0.11, 0.14}, 0.034, 0.06 * Math.sin(turn), 0.56 - 0.05 * Math.cos(turn), 0.72 * Math.sin(turn), 0.60 - 0.72 * Math.cos(turn),
                    reach * 0.98 * Math.sin(turn) * 0.92, 0.60 - reach * Math.cos(turn));
        }
        g.over(hinge -> hinge.dome(corners(-0.36, 0.60, -0.30, 0.82, 0.30, 0.82, 0.36, 0.60, 0.10, 0.64, -0.10, 0.64), 0.05, 0.04));
        for (int ring = 0; ring < 3; ring++) {
            double far = 0.55 + ring * 0.28;
            g.groove(0.022, 0.014, -0.80 * far, 0.50 - far * 0.62, -0.5 * far, 0.56 - far * 0.98, 0, 0.58 - far * 1.10, 0.5 * far, 0.56 - far * 0.98, 0.80 * far, 0.50 - far * 0.62);
        }
    }

    static void altar(Graver g) {
        g.over(block -> {
            block.dome(corners(-0.42, -0.34, 0.42, -0.34, 0.38, 0.56, -0.38, 0.56), 0.070, 0.05);
            block.dome(corners(-0.56, -0.52, 0.56, -0.52, 0.50, -0.36, -0.50, -0.36), 0.080, 0.04);
            block.dome(corners(-0.48, 0.56, 0.48, 0.56, 0.56, 0.74, -0.56, 0.74), 0.080, 0.04);
            block.tube(new double[] {0.10, 0.14, 0.05}, 0.06, -0.46, -0.52, -0.56, -0.64, -0.48, -0.74);
            block.tube(new double[] {0.10, 0.14, 0.05}, 0.06, 0.46, -0.52, 0.56, -0.64, 0.48, -0.74);
        });
        g.over(garland -> {
            for (int i = 0; i <= 12; i++) {
                double share = i / 12.0;
                garland.dot(-0.36 + share * 0.72, -0.16 + 0.26 * Math.sin(Math.PI * share), 0.066, 0.05);
            }
            garland.tube(new double[] {0.03, 0.04, 0.02}, 0.04, -0.36, -0.16, -0.39, 0.04, -0.34, 0.22);
            garland.tube(new double[] {0.03, 0.04, 0.02}, 0.04, 0.36, -0.16, 0.39, 0.04, 0.34, 0.22);
        });
    }

    /** An urn on its side, water flowing left. */
    static void urn(Graver g) {
        g.over(jar -> {
            jar.dome(through(true, -0.34, -0.20, 0.02, -0.36, 0.46, -0.34, 0.76, -0.10, 0.80, 0.08, 0.56, 0.34, 0.10, 0.38, -0.30, 0.20), 0.11, 0.26);
            jar.dome(oval(-0.36, 0.0, 0.09, 0.27, 8), 0.09, 0.05);
            jar.dome(oval(0.86, 0.0, 0.07, 0.15, 0), 0.06, 0.05);
            jar.line(0.07, 0.07, -0.22, -0.26, -0.04, -0.54, 0.22, -0.36);
        });
        g.groove(0.03, 0.03, 0.10, -0.34, 0.04, 0.0, 0.12, 0.36);
        g.groove(0.03, 0.03, 0.46, -0.34, 0.54, 0.0, 0.46, 0.34);
        g.over(water -> {
            for (int i = 0; i < 5; i++) {
                water.tube(new double[] {0.06, 0.07, 0.04}, 0.045, -0.40, -0.12 + i * 0.06, -0.60, 0.06 + i * 0.07, -0.72 + i * 0.05, 0.50, -0.95 + i * 0.20, 0.80);
            }
        });
    }

    /** Bow in its case beside a quiver, aslant. */
    static void bowCase(Graver g) {
        g.over(bow -> {
            bow.tube(new double[] {0.06, 0.09, 0.03}, 0.06, -0.30, 0.60, -0.62, 0.10, -0.42, -0.30, -0.66, -0.80, -0.54, -0.92);
            bow.dome(through(true, -0.36, 0.90, -0.56, 0.50, -0.60, 0.10, -0.34, -0.10, -0.10, 0.10, -0.08, 0.60, -0.16, 0.90), 0.075, 0.14);
        });
        g.over(quiver -> {
            quiver.dome(corners(0.06, -0.50, 0.48, -0.60, 0.62, 0.72, 0.44, 0.88, 0.26, 0.80), 0.085, 0.16);
            quiver.dome(corners(0.00, -0.46, 0.52, -0.58, 0.54, -0.74, -0.02, -0.62), 0.095, 0.06);
        });
        for (int i = 0; i < 3; i++) {
            g.rib(new double[] {0.05, 0.06, 0.05}, 0.024, 0.10 + i * 0.06, -0.20 + i * 0.30, 0.34 + i * 0.03, -0.24 + i * 0.30, 0.54 + i * 0.02, -0.26 + i * 0.30);
        }
        for (int i = 0; i < 4; i++) {
            g.swell(-0.36 + 0.03 * Math.sin(i), 0.14 + i * 0.17, 0.04, 0.04, 0, 0.025);
        }
        g.over(strap -> {
            strap.line(0.045, 0.04, 0.06, -0.40, -0.20, -0.62, -0.34, -0.28);
            for (int i = 0; i < 4; i++) {
                strap.tube(new double[] {0.05, 0.08, 0.02}, 0.05, 0.08 + i * 0.11, -0.66 - i * 0.02, 0.06 + i * 0.13, -0.82, 0.10 + i * 0.12, -0.94);
            }
        });
    }

    static void anchor(Graver g) {
        g.tube(new double[] {0.10, 0.09, 0.09}, 0.06, 0, -0.74, 0, 0.1, 0, 0.88);
        g.over(parts -> {
            parts.line(0.09, 0.06, -0.58, 0.46, -0.44, 0.74, 0, 0.90, 0.44, 0.74, 0.58, 0.46);
            parts.line(0.09, 0.06, -0.34, -0.58, 0, -0.60, 0.34, -0.58);
            parts.line(0.06, 0.05, 0, -0.78, 0.11, -0.88, 0, -0.98, -0.11, -0.88, 0, -0.78);
            parts.dome(corners(-0.74, 0.56, -0.58, 0.34, -0.44, 0.58), 0.06, 0.03);
            parts.dome(corners(0.74, 0.56, 0.58, 0.34, 0.44, 0.58), 0.06, 0.03);
        });
    }

    /** A plough with its share to the left. */
    static void plough(Graver g) {
        g.tube(new double[] {0.09, 0.12, 0.07}, 0.07, -0.95, -0.24, -0.30, -0.30, 0.06, 0.10, 0.16, 0.46);
        g.over(parts -> {
            parts.tube(new double[] {0.05, 0.16, 0.10}, 0.08, -0.70, 0.66, -0.20, 0.56, 0.30, 0.48);
            parts.tube(new double[] {0.12, 0.10, 0.08}, 0.075, 0.22, 0.48, 0.60, 0.16, 0.72, -0.34, 0.92, -0.56);
            parts.line(0.06, 0.06, -0.14, 0.54, -0.16, 0.10, -0.22, -0.20);
            parts.line(0.06, 0.06, -0.95, -0.40, -0.90, -0.24, -0.95, -0.08);
        });
    }

    static void stephane(Graver g) {
        g.dome(through(true, -0.84, 0.34, -0.62, -0.10, -0.26, -0.40, 0, -0.56, 0.26, -0.40, 0.62, -0.10, 0.84, 0.34, 0.48, 0.20, 0.0, 0.10, -0.48, 0.20), 0.08, 0.14);
        g.rib(new double[] {0.04, 0.05, 0.04}, 0.03, -0.74, 0.24, -0.44, 0.12, 0, 0.04, 0.44, 0.12, 0.74, 0.24);
        for (int i = -3; i <= 3; i++) {
            g.swell(i * 0.17, -0.16 + i * i * 0.030, 0.045, 0.045, 0, 0.04);
        }
    }

    static void thunderbolt(Graver g) {
        g.dome(oval(0, 0, 0.20, 0.13, 0), 0.07, 0.08);
        for (int side = -1; side <= 1; side += 2) {
            g.tube(new double[] {0.14, 0.16, 0.03}, 0.065, side * 0.10, 0, side * 0.50, 0.02, side * 0.95, 0);
            g.tube(new double[] {0.10, 0.10, 0.03}, 0.055, side * 0.16, 0, side * 0.44, -0.16, side * 0.84, -0.18);
            g.tube(new double[] {0.10, 0.10, 0.03}, 0.055, side * 0.16, 0, side * 0.44, 0.16, side * 0.84, 0.18);
        }
    }

    static void fish(Graver g) {
        g.dome(through(true, -0.9, 0, -0.4, -0.30, 0.3, -0.22, 0.6, 0, 0.3, 0.22, -0.4, 0.28), 0.08, 0.2);
        g.dome(corners(0.5, 0, 0.95, -0.36, 0.82, 0, 0.95, 0.34), 0.05, 0.08);
    }
}
