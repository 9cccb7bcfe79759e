package exergue.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DensityTest {

    @ParameterizedTest(name = "water at {0} degrees is {1} g/cm³: calculated by Tanaka’s formula, Metrologia 38, 2001, as seen")
    @CsvSource({"4, 0.99997495", "10, 0.99970270", "15, 0.99910257", "20, 0.99820675", "25, 0.99704702", "30, 0.99564880"})
    void water(BigDecimal celsius, BigDecimal density) {
        assertEquals(density, Density.ofWater(celsius).orElseThrow().setScale(8, RoundingMode.HALF_EVEN));
    }

    @Test
    void noWaterOutsideTheTable() {
        assertTrue(Density.ofWater(new BigDecimal("-0.1")).isEmpty());
        assertTrue(Density.ofWater(new BigDecimal("40.1")).isEmpty());
    }

    @ParameterizedTest(name = "{0} g in air, {1} g in water of {2}, air {3}: {4} g/cm³, calculated")
    @CsvSource({"8.630, 7.800, 1, 0, 10.39759", "8.630, 7.800, 0.99820675, 0, 10.37894",
            "14.10, 13.08, 0.99820675, 0.0012, 13.7834"})
    void coin(BigDecimal inAir, BigDecimal inWater, BigDecimal water, BigDecimal air, BigDecimal density) {
        assertEquals(density, Density.ofCoin(inAir, inWater, water, air).orElseThrow()
                .setScale(density.scale(), RoundingMode.HALF_EVEN));
    }

    @ParameterizedTest(name = "silver in silver and copper at {0} g/cm³ is {1}: calculated with densities from memory")
    @CsvSource({"10.39759, 0.94795", "10.37894, 0.93734"})
    void silver(BigDecimal density, BigDecimal share) {
        assertEquals(share, Alloy.SILVER_COPPER.share(density).setScale(5, RoundingMode.HALF_EVEN));
    }

    @ParameterizedTest(name = "14.10 g in air, {0} g in water, air of {1} is {2} gold: calculated, silver at 10.5 g/cm³")
    @CsvSource({"13.08, 0.0012, 0.5224", "13.07, 0, 0.508", "13.09, 0, 0.541"})
    void gold(BigDecimal inWater, BigDecimal air, BigDecimal share) {
        BigDecimal water = Density.ofWater(new BigDecimal("20")).orElseThrow();
        BigDecimal density = Density.ofCoin(new BigDecimal("14.10"), inWater, water, air).orElseThrow();
        Alloy rounded = new Alloy("gold", new BigDecimal("19.3"), "silver", new BigDecimal("10.5"));
        assertEquals(share, rounded.share(density).setScale(share.scale(), RoundingMode.HALF_EVEN));
    }

    @Test
    void finenessIsTheFigureAndWhatTheBalanceAllows() {
        assertEquals("52 (51–54) per cent", Alloy.GOLD_SILVER.fineness(weighed("14.10", "13.08")).orElseThrow().text());
    }

    @Test
    void noFinenessWhereNoSuchAlloyIs() {
        assertTrue(Alloy.GOLD_SILVER.fineness(weighed("8.63", "7.60")).isEmpty());
        assertTrue(Alloy.GOLD_SILVER.fineness(weighed("8.63", "8.63")).isEmpty());
        assertTrue(Alloy.GOLD_SILVER.fineness(weighed("8.63", "0")).isEmpty());
        assertTrue(Alloy.GOLD_SILVER.fineness(weighed("20.00", "19.00")).isEmpty());
        assertEquals(BigDecimal.ONE, Alloy.GOLD_SILVER.fineness(weighed("20.00", "18.965")).orElseThrow().most());
    }

    private static Alloy.Weighings weighed(String inAir, String inWater) {
        return new Alloy.Weighings(new BigDecimal(inAir), new BigDecimal(inWater), new BigDecimal("0.01"), new BigDecimal("20"));
    }

    @Test
    void surfaceOfARoundFlan() {
        BigDecimal surface = Flan.surface(Hints.read(Kind.DIAMETER, "20 mm", "")).orElseThrow();
        assertEquals("314.159", surface.setScale(3, RoundingMode.HALF_EVEN).toPlainString());
        assertTrue(Flan.surface(Hints.read(Kind.DIAMETER, "18-20 mm", "")).isEmpty());
    }
}
