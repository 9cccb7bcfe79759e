package exergue.demo;

/**
 * How a relief looks under a soft lamp from the upper left: how much of the lamp each spot sees, how much of the room,
 * how the slopes throw light back. Heights in pixels.
 */
final class Lamp {

    /** For each spot: {@code light} that is scattered, {@code gloss} that is mirrored, {@code open} to the room. */
    record Lit(Field light, Field gloss, Field open) { }

    private static final double FROM = Math.toRadians(-128);
    private static final double STEEP = Math.tan(Math.toRadians(38));
    private static final int WAYS = 10;

    private final Field relief;
    private final Field cover;
    private final double pixelsPerMm;

    /** @param cover what of the picture is coin; the rest is not lit */
    Lamp(Field relief, Field cover, double pixelsPerMm) {
        this.relief = relief;
        this.cover = cover;
        this.pixelsPerMm = pixelsPerMm;
    }

    Lit lit() {
        Field shade = shade().blurred(pixelsPerMm * 0.02);
        Field open = open();
        Field light = new Field(relief.width, relief.height);
        Field gloss = new Field(relief.width, relief.height);
        double[] key = unit(Math.cos(FROM), Math.sin(FROM), 0.95);
        double[] fill = unit(Math.cos(FROM + 2.2), Math.sin(FROM + 2.2), 1.4);
        for (int y = 0; y < relief.height; y++) {
            for (int x = 0; x < relief.width; x++) {
                int i = y * relief.width + x;
                if (cover.at[i] == 0) {
                    continue;
                }
                double slopeX = (relief.get(x + 1, y) - relief.get(x - 1, y)) / 2;
                double slopeY = (relief.get(x, y + 1) - relief.get(x, y - 1)) / 2;
                double up = 1 / Math.sqrt(1 + slopeX * slopeX + slopeY * slopeY);
                double facing = up * (key[2] - slopeX * key[0] - slopeY * key[1]);
                double filled = up * (fill[2] - slopeX * fill[0] - slopeY * fill[1]);
                light.at[i] = (float) (0.74 * Math.max(0, facing) * (1 - 0.75 * shade.at[i])
                        + 0.12 * Math.max(0, filled) + 0.22 * open.at[i] * (0.4 + 0.6 * up));
                gloss.at[i] = (float) (mirrored(slopeX * up, slopeY * up, up) * (1 - 0.85 * shade.at[i]) * open.at[i]);
            }
        }
        return new Lit(light, gloss, open);
    }

    /** What a polished slope would show: a large lamp in the upper left, a dim ceiling, a dark table. */
    private static double mirrored(double slopeX, double slopeY, double up) {
        double x = -2 * up * slopeX;
        double y = -2 * up * slopeY;
        double z = 2 * up * up - 1;
        double[] lamp = unit(Math.cos(FROM), Math.sin(FROM), 1.15);
        double toLamp = Math.max(0, x * lamp[0] + y * lamp[1] + z * lamp[2]);
        double wide = Math.pow(toLamp, 3) * 0.55 + Math.pow(toLamp, 14) * 0.75;
        return wide + 0.22 * Math.max(0, z);
    }

    private float near(double x, double y) {
        int column = (int) x;
        int row = (int) y;
        return column >= 0 && row >= 0 && column < relief.width && row < relief.height ? relief.at[row * relief.width + column] : 0;
    }

    private static double[] unit(double x, double y, double z) {
        double length = Math.sqrt(x * x + y * y + z * z);
        return new double[] {x / length, y / length, z / length};
    }

    /** How far each spot lies in the shadow of what stands towards the lamp, 0 to 1. */
    private Field shade() {
        Field shade = new Field(relief.width, relief.height);
        double reach = pixelsPerMm * 2.2;
        int steps = (int) Math.max(5, Math.min(16, reach / 3));
        double[] across = new double[steps + 1];
        double[] down = new double[steps + 1];
        double[] fars = new double[steps + 1];
        for (int step = 1; step <= steps; step++) {
            fars[step] = reach * step * step / (steps * steps) + 0.8 * step / steps;
            across[step] = Math.cos(FROM) * fars[step];
            down[step] = Math.sin(FROM) * fars[step];
        }
        for (int y = 0; y < relief.height; y++) {
            for (int x = 0; x < relief.width; x++) {
                if (cover.at[y * relief.width + x] == 0) {
                    continue;
                }
                float here = relief.at[y * relief.width + x];
                double most = 0;
                for (int step = 1; step <= steps; step++) {
                    double far = fars[step];
                    double over = near(x + across[step], y + down[step]) - here - STEEP * far;
                    if (over > 0) {
                        most = Math.max(most, over / (0.10 * pixelsPerMm + 0.35 * far));
                    }
                }
                shade.at[y * relief.width + x] = (float) Math.min(1, most);
            }
        }
        return shade;
    }

    /** How much of the room above each spot sees, 0 to 1: horizons in ten directions. */
    private Field open() {
        Field open = new Field(relief.width, relief.height);
        int ways = pixelsPerMm < 25 ? 6 : WAYS;
        double[] across = new double[ways];
        double[] down = new double[ways];
        for (int way = 0; way < ways; way++) {
            across[way] = Math.cos(2 * Math.PI * way / ways + 0.3);
            down[way] = Math.sin(2 * Math.PI * way / ways + 0.3);
        }
        double[] far = pixelsPerMm < 25 ? new double[] {0.2 * pixelsPerMm + 1, 0.8 * pixelsPerMm + 1}
                : new double[] {0.06 * pixelsPerMm + 1, 0.18 * pixelsPerMm + 1, 0.45 * pixelsPerMm + 1, 1.0 * pixelsPerMm + 1};
        for (int y = 0; y < relief.height; y++) {
            for (int x = 0; x < relief.width; x++) {
                if (cover.at[y * relief.width + x] == 0) {
                    continue;
                }
                float here = relief.at[y * relief.width + x];
                double sum = 0;
                for (int way = 0; way < ways; way++) {
                    double horizon = 0;
                    for (double step : far) {
                        double rise = near(x + across[way] * step, y + down[way] * step) - here;
                        horizon = Math.max(horizon, rise / step);
                    }
                    sum += 1 / (1 + horizon * horizon);
                }
                open.at[y * relief.width + x] = (float) (sum / ways);
            }
        }
        return open;
    }
}
