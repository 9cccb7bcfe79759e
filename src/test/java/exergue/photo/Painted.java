package exergue.photo;

import java.util.List;
import java.util.function.DoubleBinaryOperator;

/** Pictures for tests, painted from what is known of them: how much of each pixel the coin covers, and two shades. */
final class Painted {

    private static final int FINE = 8;

    private Painted() { }

    /** A plain coin on a plain ground; {@code inside} is above 0 where the coin is. Shades in light, 0 to 1. */
    static Raster plain(int width, int height, DoubleBinaryOperator inside, double[] coin, double[] ground) {
        float[] samples = new float[width * height * 3];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double covered = covered(inside, x, y);
                for (int c = 0; c < 3; c++) {
                    samples[(y * width + x) * 3 + c] = (float) written(covered * coin[c] + (1 - covered) * ground[c]);
                }
            }
        }
        return Raster.rgb(width, height, samples);
    }

    private static double covered(DoubleBinaryOperator inside, int x, int y) {
        int hits = 0;
        for (int i = 0; i < FINE * FINE; i++) {
            hits += inside.applyAsDouble(x + (i % FINE + 0.5) / FINE, y + (i / FINE + 0.5) / FINE) > 0 ? 1 : 0;
        }
        return hits / (double) (FINE * FINE);
    }

    /** The transfer function of sRGB, IEC 61966-2-1. */
    static double written(double light) {
        return light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
    }

    /** Above 0 inside the ellipse with these half axes, its first one turned clockwise from upright. */
    static DoubleBinaryOperator ellipse(Point middle, double along, double across, double degrees) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        return (x, y) -> {
            double first = (x - middle.x()) * sin - (y - middle.y()) * cos;
            double second = (x - middle.x()) * cos + (y - middle.y()) * sin;
            return 1 - first * first / (along * along) - second * second / (across * across);
        };
    }

    static Outline outline(double... xy) {
        return new Outline(new Ring(java.util.stream.IntStream.range(0, xy.length / 2)
                .mapToObj(i -> new Point(xy[2 * i], xy[2 * i + 1])).toList()), List.of());
    }
}
