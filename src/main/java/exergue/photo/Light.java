package exergue.photo;

/** Samples as written to the light they stand for, both 0 to 1: the transfer function of sRGB (IEC 61966-2-1). */
final class Light {

    private static final int STEPS = 4096;
    private static final float[] TABLE = table();

    private Light() { }

    private static float[] table() {
        float[] table = new float[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            double written = i / (double) STEPS;
            table[i] = (float) (written <= 0.04045 ? written / 12.92 : Math.pow((written + 0.055) / 1.055, 2.4));
        }
        return table;
    }

    static float of(double written) {
        return TABLE[(int) Math.round(Math.min(1, Math.max(0, written)) * STEPS)];
    }
}
