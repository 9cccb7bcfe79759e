package exergue.demo;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Works a relief as an engraver works a die, only upwards. Coordinates are those of the design: the die's rim is the
 * circle of radius 1, y downwards; heights are shares of the die's radius. Domes, tubes and locks stand beside each
 * other on the ground (the higher one wins); what is put on, swollen or grooved changes the height that is there.
 */
final class Graver {

    private final Field field;
    private final AffineTransform place;
    private final double unit;
    private final double tall;

    Graver(Field field, AffineTransform place) {
        this(field, place, 1);
    }

    private Graver(Field field, AffineTransform place, double tall) {
        this.tall = tall;
        this.field = field;
        this.place = place;
        this.unit = Math.sqrt(Math.abs(place.getDeterminant()));
    }

    Field field() {
        return field;
    }

    /** The same design elsewhere: moved, turned clockwise in degrees and made smaller; small things stand a little taller. */
    Graver at(double x, double y, double scale, double degrees) {
        AffineTransform there = new AffineTransform(place);
        there.translate(x, y);
        there.rotate(Math.toRadians(degrees));
        there.scale(scale, scale);
        return new Graver(field, there, tall * Math.pow(scale, 0.7));
    }

    Graver flipped() {
        AffineTransform there = new AffineTransform(place);
        there.scale(-1, 1);
        return new Graver(field, there, tall);
    }

    /** A clean sheet at the same place, to be put onto this one later. */
    Graver sheet() {
        return new Graver(new Field(field.width, field.height), place, tall);
    }

    /** Everything of the other on top of what is here. */
    void put(Graver other) {
        field.add(other.field, 1);
    }

    /** Draws on a clean sheet, then puts it on: a part that lies over others. */
    void over(java.util.function.Consumer<Graver> part) {
        Graver sheet = sheet();
        part.accept(sheet);
        put(sheet);
    }

    /** As put, only where this relief already stands. */
    void putWithin(Graver other, Shape limit) {
        Field inside = Field.covered(place.createTransformedShape(limit), field.width, field.height).blurred(unit * 0.006);
        field.add(other.field.copy().times(inside), 1);
    }

    /** A plateau of this height whose shoulders are rounded over this breadth. */
    void dome(Shape shape, double height, double round) {
        Shape there = place.createTransformedShape(shape);
        Box box = Box.of(there, 3, field);
        if (box.empty()) {
            return;
        }
        Field part = Field.covered(box.moved(there), box.width(), box.height());
        Field inward = part.inward();
        double reach = Math.max(1, round * unit);
        for (int i = 0; i < inward.at.length; i++) {
            double share = Math.min(1, inward.at[i] / reach);
            inward.at[i] = (float) (height * tall * Math.sqrt(share * (2 - share)));
        }
        box.highest(field, inward.blurred(Math.min(reach * 0.22, unit * 0.03)));
    }

    /** A plateau that hides what lies under it, as cloth does. */
    void cover(Shape shape, double height, double round) {
        Graver sheet = sheet();
        sheet.dome(shape, height, round);
        Field share = Field.covered(place.createTransformedShape(shape), field.width, field.height).blurred(unit * 0.008);
        for (int i = 0; i < field.at.length; i++) {
            float hidden = Math.min(1, share.at[i] * 1.05f);
            field.at[i] = field.at[i] * (1 - hidden) + Math.max(sheet.field.at[i], field.at[i] * 0.15f) * hidden;
        }
    }

    /** A plateau flat on top with short straight sides: letters, masonry. */
    void slab(Shape shape, double height, double slope) {
        Shape there = place.createTransformedShape(shape);
        Box box = Box.of(there, 6, field);
        if (box.empty()) {
            return;
        }
        Field part = Field.covered(box.moved(there), box.width(), box.height()).blurred(slope * unit);
        for (int i = 0; i < part.at.length; i++) {
            part.at[i] *= (float) (height * tall);
        }
        box.highest(field, part);
    }

    /** Raises (or sinks, below 0) softly about a middle; the half axes are where 60 % of the height is left. */
    void swell(double x, double y, double across, double down, double degrees, double height) {
        AffineTransform there = new AffineTransform(place);
        there.translate(x, y);
        there.rotate(Math.toRadians(degrees));
        there.scale(across, down);
        Box box = Box.of(there.createTransformedShape(new Ellipse2D.Double(-3, -3, 6, 6)), 1, field);
        AffineTransform back;
        try {
            back = there.createInverse();
        } catch (java.awt.geom.NoninvertibleTransformException flat) {
            return;
        }
        Point2D.Double spot = new Point2D.Double();
        for (int row = 0; row < box.height(); row++) {
            for (int column = 0; column < box.width(); column++) {
                spot.setLocation(box.left() + column + 0.5, box.top() + row + 0.5);
                back.transform(spot, spot);
                double far = spot.x * spot.x + spot.y * spot.y;
                field.at[(box.top() + row) * field.width + box.left() + column] += (float) (height * tall * Math.exp(-far / 2));
            }
        }
    }

    /** A round ridge along the curve through the points, as broad as the widths say at start, middle and end. */
    void tube(double[] widths, double height, double... points) {
        ridge(curve(points), widths, height, false);
    }

    /** A tube of one width. */
    void line(double width, double height, double... points) {
        tube(new double[] {width, width, width}, height, points);
    }

    /** As a tube, but taken away from what is there. */
    void groove(double width, double depth, double... points) {
        over(new double[] {width * 0.6, width, width * 0.5}, depth, -1, points);
    }

    /** As a tube, but on top of what is there. */
    void rib(double[] widths, double height, double... points) {
        over(widths, height, 1, points);
    }

    private void over(double[] widths, double height, int sign, double... points) {
        double margin = Math.max(widths[0], Math.max(widths[1], widths[2])) * unit;
        Box box = Box.of(place.createTransformedShape(through(false, points)), (int) margin + 3, field);
        if (box.empty()) {
            return;
        }
        AffineTransform there = AffineTransform.getTranslateInstance(-box.left(), -box.top());
        there.concatenate(place);
        Graver part = new Graver(new Field(box.width(), box.height()), there, tall);
        part.ridge(part.curve(points), widths, height, true);
        part.round(height * tall);
        box.added(field, part.field, sign);
    }

    /**
     * A tapering lock of hair: strands side by side that bend by so many degrees along their way and come together at
     * the tip.
     */
    void lock(double x, double y, double degrees, double length, double width, double bend, double height) {
        int steps = 7;
        for (int strand = -2; strand <= 2; strand++) {
            double[] points = new double[2 * (steps + 1)];
            double turn = Math.toRadians(degrees);
            double px = x;
            double py = y;
            for (int i = 0; i <= steps; i++) {
                double share = (double) i / steps;
                double aside = strand * width * 0.25 * (0.55 + 0.6 * Math.sin(Math.PI * share)) * (1 - share * share * 0.75);
                points[2 * i] = px - Math.sin(turn) * aside;
                points[2 * i + 1] = py + Math.cos(turn) * aside;
                px += Math.cos(turn) * length / steps;
                py += Math.sin(turn) * length / steps;
                turn += Math.toRadians(bend) / steps * (0.4 + 1.2 * share);
            }
            double tall = height * (1 - 0.09 * strand * strand);
            tube(new double[] {width * 0.22, width * 0.34, width * 0.16}, tall, points);
        }
    }

    /** From a half circle to a bell: no seam where it meets the ground. */
    private void round(double height) {
        for (int i = 0; i < field.at.length; i++) {
            double share = Math.min(1, field.at[i] / Math.max(1e-9, height));
            field.at[i] = (float) (height * share * share * (1.6 - 0.6 * share));
        }
    }

    void dot(double x, double y, double radius, double height) {
        dome(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius), height, radius);
    }

    private void ridge(List<Point2D.Double> curve, double[] widths, double height, boolean even) {
        double fullest = Math.max(widths[0], Math.max(widths[1], widths[2])) / 2 * unit;
        double all = curve.size() - 1.0;
        for (int i = 0; i < curve.size(); i++) {
            double share = all == 0 ? 0 : i / all;
            double wide = share < 0.5 ? widths[0] + (widths[1] - widths[0]) * smooth(share * 2)
                    : widths[1] + (widths[2] - widths[1]) * smooth(share * 2 - 1);
            double radius = Math.max(0.6, wide / 2 * unit);
            double top = tall * (even ? height : height * Math.min(1, Math.sqrt(0.15 + radius / fullest)));
            stamp(curve.get(i), radius, top);
        }
    }

    private void stamp(Point2D.Double middle, double radius, double top) {
        int left = (int) Math.max(0, Math.floor(middle.x - radius));
        int right = (int) Math.min(field.width - 1.0, Math.ceil(middle.x + radius));
        int upper = (int) Math.max(0, Math.floor(middle.y - radius));
        int lower = (int) Math.min(field.height - 1.0, Math.ceil(middle.y + radius));
        for (int y = upper; y <= lower; y++) {
            for (int x = left; x <= right; x++) {
                double far = Math.hypot(x + 0.5 - middle.x, y + 0.5 - middle.y) / radius;
                if (far < 1) {
                    float tall = (float) (top * Math.sqrt(1 - far * far));
                    field.at[y * field.width + x] = Math.max(field.at[y * field.width + x], tall);
                }
            }
        }
    }

    private static double smooth(double share) {
        return share * share * (3 - 2 * share);
    }

    /** Points less than a pixel apart, in pixels, along the curve through the given ones. */
    private List<Point2D.Double> curve(double[] points) {
        List<Point2D.Double> dense = new ArrayList<>();
        PathIterator path = new FlatteningPathIterator(through(false, points).getPathIterator(place), 0.2);
        double[] spot = new double[6];
        Point2D.Double last = null;
        for (; !path.isDone(); path.next()) {
            path.currentSegment(spot);
            Point2D.Double next = new Point2D.Double(spot[0], spot[1]);
            if (last != null) {
                int parts = (int) Math.max(1, Math.ceil(last.distance(next) / 0.8));
                for (int i = 1; i <= parts; i++) {
                    double share = (double) i / parts;
                    dense.add(new Point2D.Double(last.x + (next.x - last.x) * share, last.y + (next.y - last.y) * share));
                }
            } else {
                dense.add(next);
            }
            last = next;
        }
        return dense;
    }

    /** The smooth curve through all points (Catmull and Rom). */
    static Path2D through(boolean closed, double... points) {
        int count = points.length / 2;
        Path2D path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        int pieces = closed ? count : count - 1;
        for (int i = 0; i < pieces; i++) {
            int before = closed ? (i + count - 1) % count : Math.max(0, i - 1);
            int next = (i + 1) % count;
            int after = closed ? (i + 2) % count : Math.min(count - 1, i + 2);
            path.curveTo(points[2 * i] + (points[2 * next] - points[2 * before]) / 6,
                    points[2 * i + 1] + (points[2 * next + 1] - points[2 * before + 1]) / 6,
                    points[2 * next] - (points[2 * after] - points[2 * i]) / 6,
                    points[2 * next + 1] - (points[2 * after + 1] - points[2 * i + 1]) / 6,
                    points[2 * next], points[2 * next + 1]);
        }
        if (closed) {
            path.closePath();
        }
        return path;
    }

    static Path2D corners(double... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int i = 2; i < points.length; i += 2) {
            path.lineTo(points[i], points[i + 1]);
        }
        path.closePath();
        return path;
    }

    static Shape oval(double x, double y, double across, double down, double degrees) {
        AffineTransform there = AffineTransform.getTranslateInstance(x, y);
        there.rotate(Math.toRadians(degrees));
        return there.createTransformedShape(new Ellipse2D.Double(-across, -down, 2 * across, 2 * down));
    }

    static Shape band(double width, double... points) {
        return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
                .createStrokedShape(through(false, points));
    }
}
