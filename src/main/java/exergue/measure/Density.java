package exergue.measure;

import java.math.BigDecimal;
import java.util.Optional;

/** Specific gravity from weighing a coin in air and in water. Densities are in g/cm³. */
public final class Density {

    /** Where the water table comes from. */
    public static final String WATER_SOURCE = "M. Tanaka and others, Recommended table for the density of water between "
            + "0 °C and 40 °C, Metrologia 38, 2001";

    /** What has to be said wherever a fineness from density is printed. */
    public static final String CAUTION = "A fineness from density holds only for a sound alloy of the two metals named: "
            + "a third metal, pores, corrosion, a plated core or air clinging to the coin mislead it, and nothing in the "
            + "figure shows it.";

    /** Air of a room; common practice, no source. */
    public static final BigDecimal ROOM_AIR = new BigDecimal("0.0012");

    private static final BigDecimal COLDEST = BigDecimal.ZERO;
    private static final BigDecimal WARMEST = new BigDecimal("40");
    private static final BigDecimal A1 = new BigDecimal("-3.983035");
    private static final BigDecimal A2 = new BigDecimal("301.797");
    private static final BigDecimal A3 = new BigDecimal("522528.9");
    private static final BigDecimal A4 = new BigDecimal("69.34881");
    private static final BigDecimal A5 = new BigDecimal("0.999974950");

    private static final BigDecimal TWO = new BigDecimal("2");

    private Density() { }

    /**
     * One coin weighed twice.
     *
     * @param inAir   in any unit of weight
     * @param inWater while hanging in water
     * @param celsius temperature of the water
     */
    public record Weighings(Quantity inAir, Quantity inWater, BigDecimal celsius) { }

    /**
     * The density in g/cm³, the buoyancy of room air taken into account. Its step is what half a step in either weighing
     * can do to it at worst, from the least to the greatest.
     *
     * @return empty where the weighings do not measurably differ, or the water is too cold or too warm
     */
    public static Optional<Quantity> of(Weighings weighed) {
        Quantity air = weighed.inAir().in(Units.GRAM);
        Quantity water = weighed.inWater().in(Units.GRAM);
        BigDecimal halfAir = air.resolution().divide(TWO, Ratio.CARRIED);
        BigDecimal halfWater = water.resolution().divide(TWO, Ratio.CARRIED);
        return ofWater(weighed.celsius()).flatMap(wet -> ofCoin(air.value(), water.value(), wet, ROOM_AIR).flatMap(density ->
                ofCoin(air.value().subtract(halfAir), water.value().add(halfWater), wet, ROOM_AIR).flatMap(most ->
                        ofCoin(air.value().add(halfAir), water.value().subtract(halfWater), wet, ROOM_AIR).map(least ->
                                new Quantity(density, Units.GRAM_PER_CM3, most.subtract(least))))));
    }

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
