package exergue.photo;

import java.util.Arrays;

/** One figure for each pixel of a picture. Filled by whoever makes it, and then only read. */
final class Plane {

    private final int width;
    private final int height;
    private final float[] values;

    Plane(int width, int height) {
        this.width = width;
        this.height = height;
        this.values = new float[width * height];
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    float at(int x, int y) {
        return values[y * width + x];
    }

    void set(int x, int y, float value) {
        values[y * width + x] = value;
    }

    Plane part(int x, int y, int partWidth, int partHeight) {
        Plane part = new Plane(partWidth, partHeight);
        for (int row = 0; row < partHeight; row++) {
            System.arraycopy(values, (y + row) * width + x, part.values, row * partWidth, partWidth);
        }
        return part;
    }

    /** At the nearest pixel there is. */
    float near(int x, int y) {
        return values[Math.min(height - 1, Math.max(0, y)) * width + Math.min(width - 1, Math.max(0, x))];
    }

    /** Between the middles of the four pixels about the place. */
    double between(double x, double y) {
        int left = (int) (x + 0.5) - 1; // rounds down, as no place lies farther out than half a pixel, or it does not matter
        int top = (int) (y + 0.5) - 1;
        double right = x - 0.5 - left;
        double below = y - 0.5 - top;
        if (left >= 0 && top >= 0 && left < width - 1 && top < height - 1) {
            int at = top * width + left;
            return (values[at] * (1 - right) + values[at + 1] * right) * (1 - below)
                    + (values[at + width] * (1 - right) + values[at + width + 1] * right) * below;
        }
        return (near(left, top) * (1 - right) + near(left + 1, top) * right) * (1 - below)
                + (near(left, top + 1) * (1 - right) + near(left + 1, top + 1) * right) * below;
    }

    /** Blurred by a Gaussian of this standard deviation, in pixels; beyond the frame goes on what stands at it. */
    Plane blurred(double sigma) {
        float[] weights = weights(sigma);
        return across(weights).down(weights);
    }

    /** From the middle outwards; what lies on both sides has the same weight. */
    private static float[] weights(double sigma) {
        float[] weights = new float[(int) Math.ceil(3 * sigma) + 1];
        float sum = 0;
        for (int i = 0; i < weights.length; i++) {
            weights[i] = (float) Math.exp(-i * i / (2 * sigma * sigma));
            sum += i == 0 ? weights[i] : 2 * weights[i];
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
        return weights;
    }

    private Plane across(float[] weights) {
        int reach = weights.length - 1;
        Plane blurred = new Plane(width, height);
        float[] row = new float[width + 2 * reach];
        for (int y = 0; y < height; y++) {
            System.arraycopy(values, y * width, row, reach, width);
            Arrays.fill(row, 0, reach, row[reach]);
            Arrays.fill(row, reach + width, row.length, row[reach + width - 1]);
            for (int x = 0; x < width; x++) {
                float sum = weights[0] * row[x + reach];
                for (int i = 1; i <= reach; i++) {
                    sum += weights[i] * (row[x + reach - i] + row[x + reach + i]);
                }
                blurred.values[y * width + x] = sum;
            }
        }
        return blurred;
    }

    private Plane down(float[] weights) {
        Plane blurred = new Plane(width, height);
        float[] row = new float[width];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                row[x] = weights[0] * values[y * width + x];
            }
            for (int i = 1; i < weights.length; i++) {
                int above = Math.max(0, y - i) * width;
                int below = Math.min(height - 1, y + i) * width;
                float weight = weights[i];
                for (int x = 0; x < width; x++) {
                    row[x] += weight * (values[above + x] + values[below + x]);
                }
            }
            System.arraycopy(row, 0, blurred.values, y * width, width);
        }
        return blurred;
    }

    /** The square of how far each pixel is from that of another plane, added to what is here. */
    void addSquaresOf(Plane one, Plane other) {
        for (int at = 0; at < values.length; at++) {
            float apart = one.values[at] - other.values[at];
            values[at] += apart * apart;
        }
    }

    /** The root of each value when it is divided by so much. */
    Plane roots(int divisor) {
        Plane roots = new Plane(width, height);
        for (int at = 0; at < values.length; at++) {
            roots.values[at] = (float) Math.sqrt(values[at] / divisor);
        }
        return roots;
    }

    /** By how much each value is above that of another plane; nought where it is not. */
    Plane beyond(Plane other) {
        Plane beyond = new Plane(width, height);
        for (int at = 0; at < values.length; at++) {
            beyond.values[at] = Math.max(0, values[at] - other.values[at]);
        }
        return beyond;
    }

    /** Adds the square of the slope at each pixel, from its neighbours on either side; at the frame from the one there is. */
    void addSlopesTo(Plane sum) {
        for (int y = 0; y < height; y++) {
            int above = Math.max(0, y - 1) * width;
            int below = Math.min(height - 1, y + 1) * width;
            for (int x = 0; x < width; x++) {
                float across = (values[y * width + Math.min(width - 1, x + 1)] - values[y * width + Math.max(0, x - 1)]) * 0.5f;
                float down = (values[below + x] - values[above + x]) * 0.5f;
                sum.values[y * width + x] += across * across + down * down;
            }
        }
    }

    /** The sum over a square that reaches so far from each pixel; beyond the frame all is nought. */
    Plane summed(int reach) {
        double[] upTo = new double[(width + 1) * (height + 1)];
        for (int y = 0; y < height; y++) {
            double row = 0;
            for (int x = 0; x < width; x++) {
                row += values[y * width + x];
                upTo[(y + 1) * (width + 1) + x + 1] = upTo[y * (width + 1) + x + 1] + row;
            }
        }
        Plane summed = new Plane(width, height);
        for (int y = 0; y < height; y++) {
            int top = Math.max(0, y - reach) * (width + 1);
            int bottom = Math.min(height, y + reach + 1) * (width + 1);
            for (int x = 0; x < width; x++) {
                int left = Math.max(0, x - reach);
                int right = Math.min(width, x + reach + 1);
                summed.values[y * width + x] = (float) (upTo[bottom + right] - upTo[bottom + left] - upTo[top + right] + upTo[top + left]);
            }
        }
        return summed;
    }
}
