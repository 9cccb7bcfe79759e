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

    /** A coin with twelve divisions of a scale bar that begins at the place: ten pixels each, black first, eight high. */
    static Raster withBar(DoubleBinaryOperator inside, int width, int height, double[] coin, double[] ground, Point from) {
        Raster plain = plain(width, height, inside, coin, ground);
        float[] samples = new float[width * height * 3];
        for (int at = 0; at < samples.length; at++) {
            int x = at / 3 % width;
            int y = at / 3 / width;
            boolean onBar = x >= from.x() && x < from.x() + 120 && y >= from.y() && y < from.y() + 8;
            samples[at] = onBar ? (int) ((x - from.x()) / 10) % 2 == 0 ? 0.05f : 1 : plain.at(x, y, at % 3);
        }
        return Raster.rgb(width, height, samples);
    }

    /** A round coin whose shadow falls six pixels to the right and down: the darkest of it lets a quarter of the light through. */
    static Raster shaded(Point middle, double radius, double[] coin, double[] ground) {
        int size = (int) (2 * middle.x());
        float[] samples = new float[size * size * 3];
        for (int at = 0; at < samples.length; at++) {
            int x = at / 3 % size;
            int y = at / 3 / size;
            double in = radius - Math.hypot(x + 0.5 - middle.x(), y + 0.5 - middle.y());
            double covered = 1 / (1 + Math.exp(-3 * in));
            double dark = 1 / (1 + Math.exp(-0.4 * (radius - Math.hypot(x + 0.5 - middle.x() - 6, y + 0.5 - middle.y() - 6))));
            double grain = 0.04 * Math.sin(12.9898 * x + 78.233 * y) * Math.sin(0.7 * x) * Math.cos(0.9 * y);
            samples[at] = (float) written(covered * coin[at % 3] * (1 + grain) + (1 - covered) * ground[at % 3] * (1 - 0.75 * dark));
        }
        return Raster.rgb(size, size, samples);
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
