package exergue.photo;

import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * The plain ground of a picture as a surface over it, so that light that falls off gently is still plain: for each channel
 * a polynomial of the second degree, fitted to the pixels along the frame.
 */
final class Ground {

    private static final int ROUNDS = 4;
    private static final double FIRST_REACH = 0.16;
    private static final double LEAST_REACH = 0.03;
    private static final double TO_SIGMA = 1.4826;
    private static final double FEWEST = 0.6;
    private static final double ROUGHEST = 0.06;
    private static final int MOST_SAMPLES = 6000;

    private final double[][] surfaces;
    private final double noise;
    private final double width;
    private final double height;

    private Ground(double[][] surfaces, double noise, Raster raster) {
        this.surfaces = surfaces;
        this.noise = noise;
        this.width = raster.width();
        this.height = raster.height();
    }

    /** Empty where what lies along the frame is not one plain ground. */
    static Optional<Ground> of(Raster raster) {
        int[][] frame = frame(raster);
        double[] middle = new double[raster.channels()];
        for (int c = 0; c < middle.length; c++) {
            int channel = c;
            middle[c] = median(Arrays.stream(frame).mapToDouble(p -> raster.at(p[0], p[1], channel)).toArray());
        }
        double[][] level = new double[middle.length][6];
        for (int c = 0; c < middle.length; c++) {
            level[c][0] = middle[c];
        }
        Ground ground = new Ground(level, FIRST_REACH / 4, raster);
        for (int round = 0; round < ROUNDS; round++) {
            Ground now = ground;
            double reach = Math.max(LEAST_REACH, 4 * ground.noise);
            int[][] like = Arrays.stream(frame).filter(p -> now.distance(raster, p[0], p[1]) < reach).toArray(int[][]::new);
            if (like.length < FEWEST * frame.length) {
                return Optional.empty();
            }
            ground = fitted(raster, like);
        }
        return ground.noise > ROUGHEST ? Optional.empty() : Optional.of(ground);
    }

    /** Pixels of a band along the frame, evenly chosen. */
    private static int[][] frame(Raster raster) {
        int band = Math.max(2, Math.min(raster.width(), raster.height()) / 60);
        int all = 2 * band * (raster.width() + raster.height());
        int step = Math.max(1, all / MOST_SAMPLES);
        int[][] chosen = new int[all / step + band][];
        int count = 0;
        int passed = 0;
        for (int y = 0; y < raster.height(); y++) {
            boolean rim = y < band || y >= raster.height() - band;
            for (int x = 0; x < raster.width(); x = rim || x != band - 1 ? x + 1 : Math.max(band, raster.width() - band)) {
                if (passed++ % step == 0 && count < chosen.length) {
                    chosen[count++] = new int[] {x, y};
                }
            }
        }
        return Arrays.copyOf(chosen, count);
    }

    private static Ground fitted(Raster raster, int[][] pixels) {
        RealMatrix terms = MatrixUtils.createRealMatrix(pixels.length, 6);
        for (int i = 0; i < pixels.length; i++) {
            terms.setRow(i, terms(pixels[i][0] / (double) raster.width(), pixels[i][1] / (double) raster.height()));
        }
        QRDecomposition solver = new QRDecomposition(terms, 1e-9);
        double[][] surfaces = new double[raster.channels()][];
        for (int c = 0; c < surfaces.length; c++) {
            int channel = c;
            surfaces[c] = solver.getSolver().solve(new ArrayRealVector(
                    Arrays.stream(pixels).mapToDouble(p -> raster.at(p[0], p[1], channel)).toArray())).toArray();
        }
        Ground exact = new Ground(surfaces, 0, raster);
        double noise = TO_SIGMA * median(Arrays.stream(pixels).mapToDouble(p -> exact.distance(raster, p[0], p[1])).toArray());
        return new Ground(surfaces, noise, raster);
    }

    private static double[] terms(double x, double y) {
        return new double[] {1, x - 0.5, y - 0.5, (x - 0.5) * (x - 0.5), (x - 0.5) * (y - 0.5), (y - 0.5) * (y - 0.5)};
    }

    private static double median(double[] values) {
        Arrays.sort(values);
        return values.length == 0 ? 0 : values[values.length / 2];
    }

    /** What the ground would be at this pixel, were nothing on it. */
    double at(int x, int y, int channel) {
        double[] surface = surfaces[Math.min(channel, surfaces.length - 1)];
        double[] terms = terms(x / width, y / height);
        double sum = 0;
        for (int i = 0; i < terms.length; i++) {
            sum += surface[i] * terms[i];
        }
        return sum;
    }

    /** How far a pixel is from the ground: the root of the mean square over the channels. */
    double distance(Raster raster, int x, int y) {
        double sum = 0;
        for (int c = 0; c < surfaces.length; c++) {
            double apart = raster.at(x, y, c) - at(x, y, c);
            sum += apart * apart;
        }
        return Math.sqrt(sum / surfaces.length);
    }

    /** What the ground would be at each pixel, were nothing on it. */
    Plane plane(int channel) {
        double[] surface = surfaces[channel];
        Plane plane = new Plane((int) width, (int) height);
        double step = 1 / width;
        for (int y = 0; y < height; y++) {
            double down = y / height - 0.5;
            double constant = surface[0] + down * (surface[2] + surface[5] * down);
            double slope = surface[1] + surface[4] * down;
            for (int x = 0; x < width; x++) {
                double across = x * step - 0.5;
                plane.set(x, y, (float) (constant + across * (slope + surface[3] * across)));
            }
        }
        return plane;
    }

    double noise() {
        return noise;
    }

    Background described() {
        int x = (int) width / 2;
        int y = (int) height / 2;
        return Background.of(at(x, y, 0), at(x, y, 1), at(x, y, 2), noise);
    }
}
