package exergue.demo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.image.BufferedImage;
import java.util.Arrays;

/** A number for each pixel, row by row: heights, distances, shares. Row 0 is on top. */
final class Field {

    final int width;
    final int height;
    final float[] at;

    Field(int width, int height) {
        this.width = width;
        this.height = height;
        this.at = new float[width * height];
    }

    /** How much of each pixel the shape covers, from 0 to 1; the shape in pixels. */
    static Field covered(Shape shape, int width, int height) {
        BufferedImage mask = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D pen = mask.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.setColor(Color.WHITE);
        pen.fill(shape);
        pen.dispose();
        byte[] grey = ((java.awt.image.DataBufferByte) mask.getRaster().getDataBuffer()).getData();
        Field covered = new Field(width, height);
        for (int i = 0; i < grey.length; i++) {
            covered.at[i] = (grey[i] & 255) / 255f;
        }
        return covered;
    }

    Field copy() {
        Field copy = new Field(width, height);
        System.arraycopy(at, 0, copy.at, 0, at.length);
        return copy;
    }

    float get(int x, int y) {
        return at[Math.max(0, Math.min(height - 1, y)) * width + Math.max(0, Math.min(width - 1, x))];
    }

    /** Between the middles of the pixels, so that 0.5 is the middle of the first. */
    float between(double x, double y) {
        int left = (int) Math.floor(x - 0.5);
        int top = (int) Math.floor(y - 0.5);
        float right = (float) (x - 0.5 - left);
        float below = (float) (y - 0.5 - top);
        float upper = get(left, top) * (1 - right) + get(left + 1, top) * right;
        float lower = get(left, top + 1) * (1 - right) + get(left + 1, top + 1) * right;
        return upper * (1 - below) + lower * below;
    }

    Field add(Field other, double times) {
        for (int i = 0; i < at.length; i++) {
            at[i] += (float) times * other.at[i];
        }
        return this;
    }

    Field times(Field other) {
        for (int i = 0; i < at.length; i++) {
            at[i] *= other.at[i];
        }
        return this;
    }

    /** A bell of this spread in pixels, as three boxes. */
    Field blurred(double sigma) {
        Field done = copy();
        if (sigma < 0.3) {
            return done;
        }
        double ideal = Math.sqrt(4 * sigma * sigma + 1);
        int small = (int) ideal;
        small -= 1 - small % 2;
        int ofSmall = (int) Math.round((12 * sigma * sigma - 3.0 * small * small - 12.0 * small - 9) / (-4.0 * small - 4));
        float[] spare = new float[at.length];
        for (int pass = 0; pass < 3; pass++) {
            int radius = (pass < ofSmall ? small : small + 2) / 2;
            boxes(done.at, spare, radius, width, height, 1, width);
            boxes(spare, done.at, radius, height, width, width, 1);
        }
        return done;
    }

    private static void boxes(float[] from, float[] to, int radius, int length, int lines, int step, int stride) {
        float part = 1f / (2 * radius + 1);
        for (int line = 0; line < lines; line++) {
            int start = line * stride;
            int end = start + (length - 1) * step;
            double sum = from[start] * (double) radius;
            for (int i = 0; i < radius; i++) {
                sum += from[start + Math.min(i, length - 1) * step];
            }
            for (int i = 0; i < length; i++) {
                sum += from[Math.min(start + (i + radius) * step, end)];
                to[start + i * step] = (float) (sum * part);
                sum -= from[Math.max(start + (i - radius) * step, start)];
            }
        }
    }

    /** Distance in pixels from the nearest pixel less than half covered; 0 outside. After Felzenszwalb and Huttenlocher. */
    Field inward() {
        Field distance = new Field(width, height);
        for (int i = 0; i < at.length; i++) {
            distance.at[i] = at[i] < 0.5f ? 0 : 1e12f;
        }
        int longest = Math.max(width, height);
        float[] line = new float[longest];
        int[] where = new int[longest];
        double[] from = new double[longest + 1];
        for (int x = 0; x < width; x++) {
            envelope(distance.at, x, width, height, line, where, from);
        }
        for (int y = 0; y < height; y++) {
            envelope(distance.at, y * width, 1, width, line, where, from);
        }
        for (int i = 0; i < at.length; i++) {
            distance.at[i] = (float) Math.max(0, Math.sqrt(distance.at[i]) - 1 + (at[i] < 1 ? at[i] : 0.5));
        }
        for (int i = 0; i < at.length; i++) {
            distance.at[i] = at[i] < 0.5f ? 0 : distance.at[i];
        }
        return distance;
    }

    private static void envelope(float[] all, int start, int step, int length, float[] line, int[] where, double[] from) {
        for (int i = 0; i < length; i++) {
            line[i] = all[start + i * step];
        }
        int last = 0;
        where[0] = 0;
        Arrays.fill(from, 0, 1, -1e18);
        from[1] = 1e18;
        for (int i = 1; i < length; i++) {
            double meet = meeting(line, i, where[last]);
            while (meet <= from[last]) {
                last--;
                meet = meeting(line, i, where[last]);
            }
            last++;
            where[last] = i;
            from[last] = meet;
            from[last + 1] = 1e18;
        }
        int on = 0;
        for (int i = 0; i < length; i++) {
            while (from[on + 1] < i) {
                on++;
            }
            float far = i - where[on];
            all[start + i * step] = far * far + line[where[on]];
        }
    }

    private static double meeting(float[] line, int right, int left) {
        return ((line[right] + (double) right * right) - (line[left] + (double) left * left)) / (2.0 * right - 2.0 * left);
    }
}
