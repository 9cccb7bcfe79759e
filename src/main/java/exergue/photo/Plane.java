package exergue.photo;

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
        return along(weights, 1, 0).along(weights, 0, 1);
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

    private Plane along(float[] weights, int stepX, int stepY) {
        int reach = weights.length / 2;
        Plane blurred = new Plane(width, height);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                float sum = 0;
                for (int i = -reach; i <= reach; i++) {
                    sum += weights[i + reach] * near(x + i * stepX, y + i * stepY);
                }
                blurred.set(x, y, sum);
            }
        }
        return blurred;
    }
}
