package exergue.demo;

/** Smooth chance: the same place and seed always give the same number, about -1 to 1. */
record Noise(long seed) {

    double at(double x, double y) {
        int left = (int) Math.floor(x);
        int top = (int) Math.floor(y);
        double right = ease(x - left);
        double below = ease(y - top);
        double upper = knot(left, top) * (1 - right) + knot(left + 1, top) * right;
        double lower = knot(left, top + 1) * (1 - right) + knot(left + 1, top + 1) * right;
        return upper * (1 - below) + lower * below;
    }

    /** Coarse and fine together, each octave half as strong as the one before. */
    double rough(double x, double y, int octaves) {
        double sum = 0;
        double part = 0.6;
        for (int i = 0; i < octaves; i++) {
            sum += part * at(x + 17.3 * i, y - 9.1 * i);
            x *= 2.03;
            y *= 2.03;
            part /= 2;
        }
        return sum;
    }

    private double knot(int x, int y) {
        long mixed = seed + x * 0x9E3779B97F4A7C15L + y * 0xC2B2AE3D27D4EB4FL;
        mixed = (mixed ^ mixed >>> 30) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ mixed >>> 27) * 0x94D049BB133111EBL;
        return ((mixed ^ mixed >>> 31) >>> 11) * 0x1.0p-52 - 1;
    }

    private static double ease(double share) {
        return share * share * (3 - 2 * share);
    }
}
