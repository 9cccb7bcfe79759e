package exergue.measure;

import java.math.BigDecimal;
import java.util.Optional;

/** Specific gravity from weighing a coin in air and in water. Densities are in g/cm³. */
public final class Density {

    /** Where the water table comes from. */
    public static final String WATER_SOURCE = "M. Tanaka and others, Recommended table for the density of water between "
            + "0 °C and 40 °C, Metrologia 38, 2001";

    /** What has to be said wherever a fineness from density is printed. */
    public static final String CAUTION = "A fineness from density holds only for a sound alloy of the two metals named. "
            + "A third metal, pores, corrosion, a plated core or air clinging to the coin mislead it, and nothing in the "
            + "figure shows it. The weighing belongs in a conservation laboratory; dense liquids other than water are "
            + "handled only there and under licence.";

    /** Air of a room; common practice, no source. */
    public static final BigDecimal ROOM_AIR = new BigDecimal("0.0012");

    private static final BigDecimal COLDEST = BigDecimal.ZERO;
    private static final BigDecimal WARMEST = new BigDecimal("40");
    private static final BigDecimal A1 = new BigDecimal("-3.983035");
    private static final BigDecimal A2 = new BigDecimal("301.797");
    private static final BigDecimal A3 = new BigDecimal("522528.9");
    private static final BigDecimal A4 = new BigDecimal("69.34881");
    private static final BigDecimal A5 = new BigDecimal("0.999974950");

    private Density() { }

    /** Density of clean water, by Tanaka's formula; empty outside its range of 0 to 40 degrees Celsius. */
    public static Optional<BigDecimal> ofWater(BigDecimal celsius) {
        if (celsius.compareTo(COLDEST) < 0 || celsius.compareTo(WARMEST) > 0) {
            return Optional.empty();
        }
        BigDecimal above = celsius.add(A1).pow(2).multiply(celsius.add(A2));
        BigDecimal below = A3.multiply(celsius.add(A4));
        return Optional.of(A5.multiply(BigDecimal.ONE.subtract(above.divide(below, Ratio.CARRIED)), Ratio.CARRIED));
    }

    /**
     * Density of the coin.
     *
     * @param inAir   weight in grams
     * @param inWater weight in grams while hanging in water
     * @param water   density of the water
     * @param air     density of the air, {@link #ROOM_AIR}; nought leaves its buoyancy out
     * @return empty where the coin does not weigh less in water than in air, or floats
     */
    public static Optional<BigDecimal> ofCoin(BigDecimal inAir, BigDecimal inWater, BigDecimal water, BigDecimal air) {
        if (inWater.signum() <= 0 || inAir.compareTo(inWater) <= 0) {
            return Optional.empty();
        }
        BigDecimal times = inAir.divide(inAir.subtract(inWater), Ratio.CARRIED);
        return Optional.of(times.multiply(water.subtract(air), Ratio.CARRIED).add(air));
    }
}
