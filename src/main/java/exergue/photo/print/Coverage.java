package exergue.photo.print;

import exergue.photo.Outline;
import exergue.photo.Point;
import exergue.photo.Ring;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;

/** How much of each pixel an outline covers, 0 to 255; holes are not covered. */
final class Coverage {

    private static final int FULL = 255;

    private final int width;
    private final byte[] samples;

    private Coverage(int width, byte[] samples) {
        this.width = width;
        this.samples = samples;
    }

    /** @param outline in pixels of this area */
    static Coverage of(Outline outline, int width, int height) {
        return of(outline, width, height, 0);
    }

    /** @param inset by how many pixels the outline is drawn in */
    static Coverage of(Outline outline, int width, int height, double inset) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Path2D path = path(outline);
        pen.setColor(Color.WHITE);
        pen.fill(path);
        if (inset > 0) {
            pen.setColor(Color.BLACK);
            pen.setStroke(new BasicStroke((float) (2 * inset), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
            pen.draw(path);
        }
        pen.dispose();
        return new Coverage(width, ((DataBufferByte) image.getRaster().getDataBuffer()).getData());
    }

    private static Path2D path(Outline outline) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        add(outline.edge(), path);
        outline.holes().forEach(hole -> add(hole, path));
        return path;
    }

    private static void add(Ring ring, Path2D path) {
        boolean first = true;
        for (Point point : ring.points()) {
            if (first) {
                path.moveTo(point.x(), point.y());
            } else {
                path.lineTo(point.x(), point.y());
            }
            first = false;
        }
        path.closePath();
    }

    byte[] samples() {
        return samples;
    }

    /** 0 to 1. */
    float at(int x, int y) {
        return (samples[y * width + x] & FULL) / (float) FULL;
    }

    /** With an edge that is a pixel softer on both sides; half of it still lies on the outline. */
    Coverage soft() {
        int height = samples.length / width;
        byte[] soft = new byte[samples.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int sum = 0;
                for (int dy = -1; dy <= 1; dy++) {
                    for (int dx = -1; dx <= 1; dx++) {
                        sum += near(x + dx, y + dy) * (2 - Math.abs(dx)) * (2 - Math.abs(dy));
                    }
                }
                soft[y * width + x] = (byte) ((sum + 8) / 16);
            }
        }
        return new Coverage(width, soft);
    }

    private int near(int x, int y) {
        return x < 0 || y < 0 || x >= width || y >= samples.length / width ? 0 : samples[y * width + x] & FULL;
    }
}
