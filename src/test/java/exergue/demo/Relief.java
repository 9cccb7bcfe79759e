package exergue.demo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;

/** Heights over a square of pixels, and what they look like under a lamp to the upper left. */
final class Relief {

    private final int size;
    private final float[] heights;

    Relief(int size) {
        this.size = size;
        this.heights = new float[size * size];
    }

    /** Adds a shape, its edges rounded over this many pixels. */
    void raise(Shape shape, AffineTransform place, double height, double soft) {
        BufferedImage mask = new BufferedImage(size, size, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D pen = mask.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.setColor(Color.WHITE);
        pen.fill(place.createTransformedShape(shape));
        pen.dispose();
        float[] layer = new float[size * size];
        for (int i = 0; i < layer.length; i++) {
            layer[i] = mask.getRaster().getSample(i % size, i / size, 0) / 255f;
        }
        layer = blurred(layer, Math.max(1, (int) Math.round(soft)));
        for (int i = 0; i < layer.length; i++) {
            heights[i] += (float) (layer[i] * height);
        }
    }

    void add(int x, int y, double height) {
        heights[y * size + x] += (float) height;
    }

    void wear(double radius) {
        System.arraycopy(blurred(heights, Math.max(1, (int) Math.round(radius))), 0, heights, 0, heights.length);
    }

    /** How far a pixel stands above what lies around it. */
    float[] standing(int around) {
        float[] mean = blurred(heights, around);
        for (int i = 0; i < mean.length; i++) {
            mean[i] = heights[i] - mean[i];
        }
        return mean;
    }

    /** Brightness of a pixel from 0 to about 1.2; steepness is how many pixels high a height of 1 is. */
    double light(int x, int y, double steepness) {
        double dx = steepness * (at(x + 1, y) - at(x - 1, y)) / 2;
        double dy = steepness * (at(x, y + 1) - at(x, y - 1)) / 2;
        double length = Math.sqrt(dx * dx + dy * dy + 1);
        double facing = (0.42 * dx + 0.55 * dy + 0.72) / length;
        double mirrored = Math.max(0, (0.21 * dx + 0.28 * dy + 0.935) / length);
        return 0.20 + 0.78 * Math.max(0, facing) + 0.30 * Math.pow(mirrored, 40);
    }

    private double at(int x, int y) {
        return heights[Math.min(size - 1, Math.max(0, y)) * size + Math.min(size - 1, Math.max(0, x))];
    }

    /** Three runs of a running mean in each direction: nearly a bell curve. */
    private float[] blurred(float[] values, int radius) {
        float[] from = values.clone();
        float[] to = new float[values.length];
        for (int run = 0; run < 3; run++) {
            mean(from, to, 1, size, radius);
            mean(to, from, size, 1, radius);
        }
        return from;
    }

    private void mean(float[] from, float[] to, int step, int next, int radius) {
        for (int line = 0; line < size; line++) {
            int start = line * next;
            float sum = 0;
            for (int i = -radius; i <= radius; i++) {
                sum += from[start + clamp(i) * step];
            }
            for (int i = 0; i < size; i++) {
                to[start + i * step] = sum / (2 * radius + 1);
                sum += from[start + clamp(i + radius + 1) * step] - from[start + clamp(i - radius) * step];
            }
        }
    }

    private int clamp(int i) {
        return Math.min(size - 1, Math.max(0, i));
    }
}
