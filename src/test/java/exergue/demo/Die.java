package exergue.demo;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;

/** What one die puts on one side: a design, letters, a border; each die cut by hand, so no two letters quite alike. */
final class Die {

    /** How the ground lies: even, or sunk in a square below a rough field. */
    enum Ground { EVEN, INCUSE_SQUARE }

    final Ground ground;
    private final List<Consumer<Graver>> work = new ArrayList<>();
    private final Font face;
    private final Random hand;

    Die(String name, Font face, Ground ground) {
        this.ground = ground;
        this.face = face;
        this.hand = new Random(name.hashCode() * 31L + 5);
    }

    void engrave(Graver g) {
        work.forEach(part -> part.accept(g));
    }

    Die design(double x, double y, double scale, double degrees, Consumer<Graver> motif) {
        double lean = degrees + hand.nextGaussian() * 1.5;
        work.add(g -> g.over(sheet -> motif.accept(sheet.at(x, y, scale, lean))));
        return this;
    }

    Die design(double scale, Consumer<Graver> motif) {
        return design(0, 0, scale, 0, motif);
    }

    Die dots(double radius, int count) {
        work.add(g -> {
            for (int i = 0; i < count; i++) {
                double turn = 2 * Math.PI * i / count;
                g.dot(radius * Math.cos(turn), radius * Math.sin(turn), 0.42 * Math.PI * radius / count * 2 * 0.62, 0.035);
            }
        });
        return this;
    }

    Die ring(double radius, double width) {
        work.add(g -> g.dome(Graver.band(width, circle(radius)), 0.030, width / 2));
        return this;
    }

    Die frame(double... corners) {
        work.add(g -> g.dome(new java.awt.BasicStroke(0.030f).createStrokedShape(Graver.corners(corners)), 0.026, 0.015));
        return this;
    }

    private static double[] circle(double radius) {
        double[] points = new double[2 * 49];
        for (int i = 0; i <= 48; i++) {
            points[2 * i] = radius * Math.cos(2 * Math.PI * i / 48);
            points[2 * i + 1] = radius * Math.sin(2 * Math.PI * i / 48);
        }
        return points;
    }

    /** A round hollow, as a punch leaves it: its ground lower, a low wall of metal thrown up around it. */
    Die punch(double x, double y, double radius) {
        work.add(g -> {
            g.at(x, y, radius, 0).dome(Graver.band(0.10, circle(1.03)), 0.035, 0.05);
            Graver hollow = g.sheet();
            hollow.slab(Graver.oval(x, y, radius, radius, 0), 0.045, 0.012);
            g.field().add(hollow.field(), -1);
        });
        return this;
    }

    /** As around, about a middle that lies lower (or higher, below 0) than the die's; put on sunk ground. */
    Die aroundAt(String text, double middle, double down, double radius, double size, double step) {
        double start = middle - step * (text.length() - 1) / 2;
        for (int i = 0; i < text.length(); i++) {
            double turn = Math.toRadians(start + step * i);
            letter(text.charAt(i), radius * Math.sin(turn), down - radius * Math.cos(turn), size, start + step * i, false);
        }
        return this;
    }

    /** Letters along the lower rim, tops inward, read from left to right. */
    Die below(String text, double middle, double radius, double size, double step) {
        double start = middle + step * (text.length() - 1) / 2;
        for (int i = 0; i < text.length(); i++) {
            double turn = Math.toRadians(start - step * i);
            letter(text.charAt(i), radius * Math.sin(turn), -radius * Math.cos(turn), size, start - step * i + 180, false);
        }
        return this;
    }

    /** A line to stand on. */
    Die bar(double down, double half) {
        work.add(g -> g.over(sheet -> sheet.line(0.028, 0.028, -half, down, 0, down, half, down)));
        return this;
    }

    /** A square punched into the ground, divided by a ridge from corner to corner. */
    Die square(double x, double y, double half, double degrees) {
        work.add(g -> {
            Graver hollow = g.sheet();
            hollow.at(x, y, half, degrees).slab(Graver.corners(-1, -1, 1, -0.94, 0.96, 1, -1.02, 0.97), 0.26, 0.05);
            g.field().add(hollow.field(), -1);
            g.over(sheet -> sheet.at(x, y, half, degrees).line(0.22, 0.13, -0.95, -0.95, 0, 0.02, 0.95, 0.95));
        });
        return this;
    }

    /** A bar along the rim where letters were cut out of the die itself. */
    Die scar(double middle, double radius, double reach) {
        double[] points = new double[14];
        for (int i = 0; i < 7; i++) {
            double turn = Math.toRadians(middle + reach * (i - 3) / 3);
            points[2 * i] = radius * Math.sin(turn) * (1 + 0.01 * (i % 2));
            points[2 * i + 1] = -radius * Math.cos(turn);
        }
        work.add(g -> g.over(sheet -> sheet.dome(Graver.band(0.13, points), 0.050, 0.05)));
        return this;
    }

    /** Letters round the rim, tops outward, their middle in this direction clockwise from the top. */
    Die around(String text, double middle, double radius, double size, double step) {
        return aroundAt(text, middle, 0, radius, size, step);
    }

    /** Letters round the rim, read from the other way: the first letter stands clockwise last, mirrored. */
    Die retrograde(String text, double middle, double radius, double size, double step) {
        double start = middle + step * (text.length() - 1) / 2;
        for (int i = 0; i < text.length(); i++) {
            letter(text.charAt(i), radius * Math.sin(Math.toRadians(start - step * i)), -radius * Math.cos(Math.toRadians(start - step * i)),
                    size, start - step * i, true);
        }
        return this;
    }

    /** Letters in a line, its middle at a point, turned clockwise. */
    Die line(String text, double x, double y, double size, double step, double degrees) {
        double along = Math.toRadians(degrees);
        for (int i = 0; i < text.length(); i++) {
            double off = (i - (text.length() - 1) / 2.0) * step;
            letter(text.charAt(i), x + off * Math.cos(along), y + off * Math.sin(along), size, degrees, false);
        }
        return this;
    }

    /** Letters one below the other, upright. */
    Die column(String text, double x, double y, double size, double step) {
        for (int i = 0; i < text.length(); i++) {
            letter(text.charAt(i), x, y + (i - (text.length() - 1) / 2.0) * step, size, 0, false);
        }
        return this;
    }

    private void letter(char letter, double x, double y, double size, double degrees, boolean mirrored) {
        if (letter == ' ') {
            return;
        }
        double lean = degrees + hand.nextGaussian() * 2.5;
        double dx = hand.nextGaussian() * size * 0.035;
        double dy = hand.nextGaussian() * size * 0.045;
        double large = size * (1 + hand.nextGaussian() * 0.035) / 0.64;
        work.add(g -> {
            GlyphVector glyph = face.deriveFont(1f).createGlyphVector(new FontRenderContext(null, true, true), String.valueOf(letter));
            Shape outline = glyph.getOutline();
            Rectangle2D bounds = outline.getBounds2D();
            Graver there = g.at(x + dx, y + dy, large, lean);
            Shape middled = java.awt.geom.AffineTransform.getTranslateInstance(-bounds.getCenterX(), -bounds.getCenterY())
                    .createTransformedShape(outline);
            there.over(sheet -> (mirrored ? sheet.flipped() : sheet).dome(middled, 0.034 / Math.pow(large, 0.7), 0.030 / large));
        });
    }
}
