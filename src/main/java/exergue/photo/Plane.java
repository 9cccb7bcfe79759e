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

    /** At the nearest pixel there is. */
    float near(int x, int y) {
        return values[Math.min(height - 1, Math.max(0, y)) * width + Math.min(width - 1, Math.max(0, x))];
    }

    /** Between the middles of the four pixels about the place. */
    double between(double x, double y) {
        int left = (int) Math.floor(x - 0.5);
        int top = (int) Math.floor(y - 0.5);
        double right = x - 0.5 - left;
        double below = y - 0.5 - top;
        return (near(left, top) * (1 - right) + near(left + 1, top) * right) * (1 - below)
                + (near(left, top + 1) * (1 - right) + near(left + 1, top + 1) * right) * below;
    }

    /** Blurred by a Gaussian of this standard deviation, in pixels; beyond the frame goes on what stands at it. */
    Plane blurred(double sigma) {
        float[] weights = weights(sigma);
        return across(weights).down(weights);
    }

    private static float[] weights(double sigma) {
        int reach = (int) Math.ceil(3 * sigma);
        float[] weights = new float[2 * reach + 1];
        float sum = 0;
        for (int i = -reach; i <= reach; i++) {
            weights[i + reach] = (float) Math.exp(-i * i / (2 * sigma * sigma));
            sum += weights[i + reach];
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
        return weights;
    }

    private Plane across(float[] weights) {
        int reach = weights.length / 2;
        Plane blurred = new Plane(width, height);
        float[] row = new float[width + 2 * reach];
        for (int y = 0; y < height; y++) {
            System.arraycopy(values, y * width, row, reach, width);
            Arrays.fill(row, 0, reach, row[reach]);
            Arrays.fill(row, reach + width, row.length, row[reach + width - 1]);
            for (int x = 0; x < width; x++) {
                float sum = 0;
                for (int i = 0; i < weights.length; i++) {
                    sum += weights[i] * row[x + i];
                }
                blurred.values[y * width + x] = sum;
            }
        }
        return blurred;
    }

    private Plane down(float[] weights) {
        int reach = weights.length / 2;
        Plane blurred = new Plane(width, height);
        for (int y = 0; y < height; y++) {
            int to = y * width;
            for (int i = -reach; i <= reach; i++) {
                int from = Math.min(height - 1, Math.max(0, y + i)) * width;
                float weight = weights[i + reach];
                for (int x = 0; x < width; x++) {
                    blurred.values[to + x] += weight * values[from + x];
                }
            }
        }
        return blurred;
    }

    /** Adds the square of the slope at each pixel, from its neighbours on either side; at the frame from the one there is. */
    void addSlopesTo(Plane sum) {
        for (int y = 0; y < height; y++) {
            int above = Math.max(0, y - 1) * width;
            int below = Math.min(height - 1, y + 1) * width;
            for (int x = 0; x < width; x++) {
                float across = (values[y * width + Math.min(width - 1, x + 1)] - values[y * width + Math.max(0, x - 1)]) / 2;
                float down = (values[below + x] - values[above + x]) / 2;
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
