package exergue.demo;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.QuadCurve2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** What a die shows: shapes in a square from -1 to 1, y downwards, each with its height in relief. */
final class Motif {

    /** @param height of the relief, below 0 for what is cut into it; @param soft how far its edges are rounded */
    record Layer(Shape shape, double height, double soft) { }

    private final List<Layer> layers = new ArrayList<>();

    static Motif of(String name) {
        Motif motif = new Motif();
        switch (name) {
            case "head" -> motif.head(false);
            case "bearded head" -> motif.head(true);
            case "heron" -> motif.heron();
            case "dolphin" -> motif.dolphin(0, 0, 0.92, 0);
            case "trident" -> motif.trident();
            case "prow" -> motif.prow();
            case "tower" -> motif.tower();
            case "leaf" -> motif.leaf();
            case "ear" -> motif.ear();
            default -> throw new IllegalArgumentException(name);
        }
        return motif;
    }

    List<Layer> layers() {
        return layers;
    }

    private void add(Shape shape, double height, double soft) {
        layers.add(new Layer(shape, height, soft));
    }

    private static Shape oval(double x, double y, double across, double down, double turn) {
        Shape flat = new Ellipse2D.Double(-across, -down, 2 * across, 2 * down);
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        place.rotate(turn);
        return place.createTransformedShape(flat);
    }

    private static Shape line(double width, double... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int i = 2; i + 3 < points.length; i += 4) {
            path.quadTo(points[i], points[i + 1], points[i + 2], points[i + 3]);
        }
        return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND).createStrokedShape(path);
    }

    private static Shape straight(double width, double x, double y, double toX, double toY) {
        return line(width, x, y, (x + toX) / 2, (y + toY) / 2, toX, toY);
    }

    private static Shape outline(double... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int i = 2; i + 1 < points.length; i += 2) {
            path.lineTo(points[i], points[i + 1]);
        }
        path.closePath();
        return path;
    }

    private void head(boolean bearded) {
        Area face = new Area(outline(0.08, -0.60, 0.26, -0.46, 0.335, -0.30, 0.355, -0.21, 0.34, -0.15, 0.43, -0.03,
                0.50, 0.05, 0.48, 0.09, 0.385, 0.105, 0.425, 0.15, 0.425, 0.175, 0.375, 0.195, 0.415, 0.235, 0.40, 0.275,
                0.365, 0.295, 0.41, 0.36, 0.405, 0.43, 0.33, 0.48, 0.20, 0.49, 0.10, 0.50, 0.09, 0.64, 0.15, 0.80,
                -0.02, 0.87, -0.24, 0.86, -0.44, 0.78, -0.34, 0.55, -0.34, 0.36, -0.44, 0.20, -0.3, -0.4));
        face.add(new Area(oval(-0.10, -0.16, 0.46, 0.48, 0)));
        add(face, 0.55, 0.020);
        add(face, 0.75, 0.10);
        add(oval(0.12, 0.16, 0.17, 0.14, 0.4), 0.35, 0.09);
        add(line(0.035, 0.19, -0.17, 0.26, -0.21, 0.33, -0.18), 0.40, 0.012);
        add(oval(0.265, -0.115, 0.05, 0.028, 0.15), 0.40, 0.010);
        add(line(0.02, 0.20, -0.12, 0.26, -0.155, 0.32, -0.12), 0.30, 0.008);
        add(line(0.02, 0.40, 0.195, 0.36, 0.205, 0.31, 0.21), -0.40, 0.010);
        add(oval(0.43, 0.075, 0.035, 0.025, 0), 0.22, 0.012);
        add(oval(-0.12, 0.06, 0.055, 0.085, 0.2), 0.40, 0.012);
        add(oval(-0.115, 0.06, 0.022, 0.045, 0.2), -0.45, 0.010);
        hair();
        add(line(0.05, 0.33, -0.33, -0.10, -0.36, -0.50, 0.04), 0.65, 0.012);
        add(line(0.035, -0.50, 0.04, -0.66, 0.14, -0.62, 0.36), 0.45, 0.012);
        add(line(0.03, -0.50, 0.05, -0.60, 0.24, -0.52, 0.42), 0.45, 0.012);
        if (bearded) {
            beard();
        }
    }

    private void hair() {
        for (int lock = 0; lock < 15; lock++) {
            double turn = Math.PI * (0.93 + lock * 0.062);
            for (int row = 0; row < 2; row++) {
                double far = 0.50 - row * 0.13;
                double x = -0.10 + far * Math.cos(turn);
                double y = -0.16 + far * Math.sin(turn);
                add(oval(x, y, 0.075, 0.03, turn + 0.9 + row * 0.4), 0.42, 0.012);
            }
        }
        for (int curl = 0; curl < 6; curl++) {
            add(oval(-0.42 + curl * 0.035, 0.12 + curl * 0.085, 0.07, 0.035, 1.0), 0.42, 0.012);
            add(oval(-0.30 + curl * 0.025, 0.10 + curl * 0.080, 0.06, 0.032, 1.1), 0.38, 0.012);
        }
        for (int curl = 0; curl < 5; curl++) {
            add(oval(0.27 - curl * 0.085, -0.32 + curl * 0.035, 0.05, 0.038, -0.3), 0.40, 0.012);
        }
    }

    private void beard() {
        for (int row = 0; row < 4; row++) {
            for (int curl = 0; curl < 6 - row; curl++) {
                double x = 0.36 - curl * 0.085 + row * 0.012;
                double y = 0.285 + row * 0.075 + curl * curl * 0.004 - curl * 0.012;
                add(oval(x, y, 0.052, 0.036, 0.9 + curl * 0.15), 0.50, 0.012);
            }
        }
        add(line(0.035, 0.41, 0.135, 0.34, 0.14, 0.27, 0.22), 0.40, 0.010);
    }

    private void heron() {
        add(oval(0.10, 0.02, 0.40, 0.19, 0.42), 0.60, 0.020);
        add(oval(0.08, 0.00, 0.36, 0.16, 0.42), 0.60, 0.070);
        add(line(0.11, -0.20, -0.10, -0.42, -0.30, -0.22, -0.48, -0.06, -0.60, -0.22, -0.72), 0.75, 0.025);
        add(oval(-0.24, -0.73, 0.105, 0.075, -0.1), 0.75, 0.025);
        add(outline(-0.31, -0.77, -0.72, -0.66, -0.31, -0.68), 0.70, 0.014);
        add(line(0.025, -0.18, -0.79, 0.00, -0.86, 0.12, -0.72), 0.45, 0.010);
        add(line(0.05, 0.02, 0.18, -0.02, 0.45, -0.03, 0.74), 0.55, 0.014);
        add(line(0.05, 0.16, 0.20, 0.20, 0.36, 0.06, 0.50, 0.12, 0.62, 0.14, 0.74), 0.55, 0.014);
        for (int feather = 0; feather < 6; feather++) {
            double down = feather * 0.045;
            add(line(0.025, -0.12 + feather * 0.06, -0.10 + down, 0.22 + feather * 0.03, -0.03 + down, 0.50, 0.22 + down * 0.5),
                    0.32, 0.009);
        }
        for (double toe : new double[] {-0.16, -0.05, 0.08, 0.24}) {
            add(straight(0.035, toe < 0 ? -0.03 : 0.14, 0.74, toe, 0.80), 0.45, 0.010);
        }
        add(straight(0.035, -0.55, 0.84, 0.55, 0.84), 0.45, 0.010);
        add(oval(-0.27, -0.745, 0.018, 0.018, 0), -0.55, 0.008);
    }

    private void dolphin(double x, double y, double size, double turn) {
        Path2D body = new Path2D.Double();
        body.moveTo(0.95, 0.05);
        body.quadTo(0.75, -0.22, 0.30, -0.36);
        body.quadTo(-0.25, -0.48, -0.70, 0.10);
        body.lineTo(-0.98, 0.10);
        body.quadTo(-0.86, 0.24, -0.80, 0.28);
        body.quadTo(-0.80, 0.46, -0.70, 0.56);
        body.quadTo(-0.60, 0.36, -0.56, 0.22);
        body.quadTo(-0.20, -0.06, 0.20, 0.10);
        body.quadTo(0.50, 0.20, 0.70, 0.12);
        body.closePath();
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        place.rotate(turn);
        place.scale(size, size);
        add(place.createTransformedShape(body), 0.65, 0.018);
        add(place.createTransformedShape(body), 0.85, 0.08);
        add(place.createTransformedShape(outline(0.10, -0.38, -0.14, -0.62, -0.22, -0.36)), 0.55, 0.016);
        add(place.createTransformedShape(outline(0.24, 0.08, 0.04, 0.40, 0.10, 0.06)), 0.60, 0.016);
        add(place.createTransformedShape(oval(0.62, -0.10, 0.045, 0.04, 0)), 0.45, 0.010);
        add(place.createTransformedShape(line(0.03, 0.90, 0.06, 0.75, 0.02, 0.66, 0.05)), -0.40, 0.010);
        add(place.createTransformedShape(line(0.03, 0.52, -0.20, 0.40, 0.00, 0.46, 0.12)), -0.30, 0.012);
    }

    private void trident() {
        add(straight(0.075, 0, -0.30, 0, 0.86), 0.65, 0.018);
        add(line(0.08, -0.34, -0.55, -0.36, -0.16, 0, -0.16, 0.36, -0.16, 0.34, -0.55), 0.65, 0.018);
        add(straight(0.075, 0, -0.16, 0, -0.70), 0.65, 0.018);
        for (double prong : new double[] {-0.34, 0, 0.34}) {
            double tip = prong == 0 ? -0.92 : -0.80;
            add(outline(prong, tip, prong - 0.10, tip + 0.24, prong, tip + 0.17, prong + 0.10, tip + 0.24), 0.75, 0.014);
        }
        add(oval(0, 0.02, 0.085, 0.05, 0), 0.45, 0.012);
        dolphin(-0.44, 0.34, 0.40, -1.3);
        dolphin(0.44, 0.34, 0.40, -1.8);
    }

    private void prow() {
        add(outline(-0.82, -0.20, 0.22, -0.14, 0.40, -0.34, 0.52, -0.42, 0.50, -0.16, 0.62, 0.10, 0.92, 0.22, 0.92, 0.32,
                0.50, 0.38, 0.30, 0.52, -0.82, 0.56), 0.60, 0.018);
        add(outline(-0.78, -0.12, 0.20, -0.06, 0.44, 0.24, 0.28, 0.46, -0.78, 0.50), 0.70, 0.08);
        add(line(0.10, 0.46, -0.38, 0.62, -0.68, 0.34, -0.72), 0.65, 0.018);
        for (int wale = 0; wale < 3; wale++) {
            double y = -0.06 + wale * 0.19;
            add(line(0.045, -0.82, y, 0.0, y + 0.06, 0.50 + wale * 0.10, y + 0.10), 0.45, 0.011);
        }
        add(outline(-0.82, -0.42, -0.10, -0.38, -0.10, -0.20, -0.82, -0.22), 0.50, 0.018);
        for (int shield = 0; shield < 4; shield++) {
            add(oval(-0.70 + shield * 0.18, -0.31, 0.055, 0.055, 0), 0.35, 0.012);
        }
        add(oval(0.26, 0.02, 0.08, 0.055, 0.1), 0.45, 0.012);
        add(oval(0.27, 0.02, 0.03, 0.03, 0), -0.50, 0.008);
        for (int wave = 0; wave < 6; wave++) {
            add(line(0.03, -0.84 + wave * 0.28, 0.72, -0.70 + wave * 0.28, 0.62, -0.58 + wave * 0.28, 0.72), 0.35, 0.010);
        }
    }

    private void tower() {
        add(outline(-0.46, 0.74, -0.40, -0.46, 0.40, -0.46, 0.46, 0.74), 0.55, 0.016);
        add(outline(-0.50, -0.42, -0.50, -0.58, 0.50, -0.58, 0.50, -0.42), 0.70, 0.016);
        for (int tooth = 0; tooth < 4; tooth++) {
            add(new Rectangle2D.Double(-0.50 + tooth * 0.27, -0.78, 0.18, 0.22), 0.65, 0.016);
        }
        for (int course = 0; course < 4; course++) {
            double y = -0.22 + course * 0.24;
            add(straight(0.022, -0.44, y, 0.44, y), -0.55, 0.010);
            for (int joint = 0; joint < 3; joint++) {
                double x = -0.30 + joint * 0.27 + (course % 2) * 0.12;
                add(straight(0.02, x, y, x, y - 0.22), -0.50, 0.010);
            }
        }
        add(outline(-0.13, 0.74, -0.13, 0.42, 0, 0.30, 0.13, 0.42, 0.13, 0.74), -0.55, 0.014);
        add(straight(0.045, -0.66, 0.80, 0.66, 0.80), 0.55, 0.012);
    }

    private void leaf() {
        Area lobes = new Area(oval(0, -0.38, 0.24, 0.44, 0));
        for (int side = -1; side <= 1; side += 2) {
            lobes.add(new Area(oval(side * 0.36, -0.16, 0.20, 0.42, side * 0.95)));
            lobes.add(new Area(oval(side * 0.32, 0.22, 0.17, 0.36, side * 1.9)));
        }
        add(lobes, 0.60, 0.018);
        add(lobes, 0.65, 0.07);
        add(line(0.05, 0, 0.10, 0.02, 0.50, 0.16, 0.82), 0.65, 0.014);
        add(straight(0.028, 0, 0.12, 0, -0.76), -0.45, 0.010);
        for (int side = -1; side <= 1; side += 2) {
            add(straight(0.026, 0, 0.10, side * 0.66, -0.38), -0.42, 0.010);
            add(straight(0.024, 0, 0.12, side * 0.58, 0.34), -0.40, 0.010);
            add(straight(0.018, 0, -0.30, side * 0.14, -0.52), -0.35, 0.009);
        }
    }

    private void ear() {
        add(straight(0.05, 0, 0.90, 0, 0.45), 0.60, 0.012);
        for (int grain = 0; grain < 7; grain++) {
            double y = 0.46 - grain * 0.17;
            for (int side = -1; side <= 1; side += 2) {
                add(oval(side * 0.14, y, 0.075, 0.13, side * 0.45), 0.65, 0.022);
                add(new BasicStroke(0.022f).createStrokedShape(new QuadCurve2D.Double(side * 0.20, y - 0.10, side * 0.42,
                        y - 0.36, side * 0.46, y - 0.50)), 0.40, 0.009);
            }
            add(oval(0, y - 0.08, 0.06, 0.11, 0), 0.75, 0.022);
        }
        add(line(0.04, 0, 0.80, 0.22, 0.62, 0.44, 0.66), 0.45, 0.012);
    }
}
