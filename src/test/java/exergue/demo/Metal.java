package exergue.demo;

import java.util.List;

/** Metals as they look: each coin's own of a few. */
enum Metal {

    GOLD(new Look(rgb(0.66, 0.41, 0.105), rgb(0.95, 0.72, 0.30), 0.55, rgb(0.26, 0.12, 0.04), 0.55, rgb(0.56, 0.29, 0.07), 0.35, 0.10)),
    SILVER(
            new Look(rgb(0.40, 0.385, 0.36), rgb(0.88, 0.87, 0.84), 0.54, rgb(0.055, 0.048, 0.040), 0.90, rgb(0.17, 0.16, 0.155), 0.62, 0.20),
            new Look(rgb(0.36, 0.345, 0.32), rgb(0.85, 0.82, 0.77), 0.50, rgb(0.050, 0.040, 0.030), 0.92, rgb(0.15, 0.125, 0.105), 0.72, 0.24),
            new Look(rgb(0.44, 0.435, 0.425), rgb(0.90, 0.90, 0.90), 0.56, rgb(0.07, 0.068, 0.066), 0.85, rgb(0.22, 0.225, 0.235), 0.50, 0.18)),
    BILLON(
            new Look(rgb(0.29, 0.255, 0.205), rgb(0.70, 0.66, 0.58), 0.30, rgb(0.065, 0.045, 0.030), 0.90, rgb(0.15, 0.090, 0.055), 0.85, 0.50),
            new Look(rgb(0.25, 0.235, 0.205), rgb(0.66, 0.64, 0.60), 0.30, rgb(0.055, 0.050, 0.040), 0.90, rgb(0.10, 0.095, 0.070), 0.85, 0.50)),
    COPPER_ALLOY(
            new Look(rgb(0.185, 0.148, 0.085), rgb(0.56, 0.50, 0.38), 0.25, rgb(0.035, 0.034, 0.022), 0.90, rgb(0.105, 0.165, 0.110), 1.0, 0.50),
            new Look(rgb(0.200, 0.118, 0.064), rgb(0.62, 0.46, 0.32), 0.26, rgb(0.040, 0.022, 0.014), 0.90, rgb(0.085, 0.060, 0.038), 0.90, 0.40),
            new Look(rgb(0.120, 0.108, 0.080), rgb(0.52, 0.50, 0.42), 0.26, rgb(0.19, 0.150, 0.095), 0.55, rgb(0.070, 0.086, 0.070), 0.90, 0.40),
            new Look(rgb(0.190, 0.140, 0.062), rgb(0.66, 0.54, 0.34), 0.27, rgb(0.050, 0.040, 0.022), 0.88, rgb(0.120, 0.125, 0.070), 0.85, 0.45)),
    LEAD(new Look(rgb(0.215, 0.212, 0.205), rgb(0.50, 0.50, 0.50), 0.18, rgb(0.10, 0.090, 0.075), 0.80, rgb(0.38, 0.37, 0.34), 0.75, 0.65));

    private final List<Look> looks;

    Metal(Look... looks) {
        this.looks = List.of(looks);
    }

    Look look(long seed) {
        return looks.get((int) Math.floorMod(seed, (long) looks.size()));
    }

    /** Shares of light that are sent back, red, green, blue. */
    record Rgb(double red, double green, double blue) {
        double at(int channel) {
            return channel == 0 ? red : channel == 1 ? green : blue;
        }
    }

    /**
     * @param body      colour of the metal as it scatters light; {@code shine} as it mirrors it, {@code gloss} how much
     * @param dirt      what lies in the hollows, {@code dirty} how thick
     * @param patina    what has grown in patches, {@code patinated} how far
     * @param rough     grain of the surface, 0 to 1
     */
    record Look(Rgb body, Rgb shine, double gloss, Rgb dirt, double dirty, Rgb patina, double patinated, double rough) { }

    private static Rgb rgb(double red, double green, double blue) {
        return new Rgb(red, green, blue);
    }
}
