package exergue.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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
        assertEquals("52 (51–54) per cent", fineness("14.10 g in air, 13.08 g in water, 20 °C"));
        assertEquals("52 per cent", fineness("14.1030 g in air, 13.0810 g in water, 20 °C"));
        assertEquals("53 (52–53) per cent", fineness("13.8 g/cm³"));
        assertEquals("100 (99–100) per cent", fineness("20.00 g in air, 18.965 g in water, 20 °C"));
    }

    @ParameterizedTest(name = "{0} g/cm³ is no alloy of gold and silver")
    @ValueSource(strings = {"8.96", "10.4", "19.4"})
    void noFinenessWhereNoSuchAlloyIs(String density) {
        assertTrue(Alloy.GOLD_SILVER.fineness(Hints.read(Kind.DENSITY, density, "").first()).isEmpty());
    }

    private static String fineness(String text) {
        return Alloy.GOLD_SILVER.fineness(Hints.read(Kind.DENSITY, text, "").first()).orElseThrow().text();
    }

    /** 14.103 / 1.022 x (0.99821 - 0.0012) + 0.0012 = 13.759, calculated. */
    @ParameterizedTest(name = "{0} [{1}] prints {2}: no finer than the balance")
    @CsvSource(delimiter = '|', value = {
        "14.10 g in air, 13.08 g in water, 20 °C||13.8 g/cm³", "14.103 g in air; 13.081 g in water; 20 °C||13.76 g/cm³",
        "14.103 in air and 13.081 in water at 20.5 deg. C|unit=gram|13.76 g/cm³", "14,103 g in air, 13,081 g in water, 20 C|comma|13.76 g/cm³",
        "217.64 grains in air, 201.87 grains in water of 20 °C||13.76 g/cm³", "14.103 g in air, 13.081 g in water, 20 °C|step=0.01|13.8 g/cm³",
        "13.78||13.78 g/cm³", "13.8 g/cm3||13.8 g/cm³", "10.312 g/cm³||10.31 g/cm³", "c. 10.3||c. 10.3 g/cm³"})
    void printed(String text, String convention, String printed) {
        assertEquals(printed, Hints.printed(Kind.DENSITY, text, convention == null ? "" : convention));
    }

    @ParameterizedTest(name = "{0}: {1} at {2}+{3}")
    @CsvSource(delimiter = '|', value = {
        "14.1 g in air|WEIGHINGS_UNCLEAR|0|13", "c. 14.1 g in air, 13.08 g in water, 20 °C|WEIGHINGS_UNCLEAR|0|9",
        "14.1 g in air, 13.08 gx in water, 20 °C|UNKNOWN_UNIT|21|2", "14.1 g in air, 59 gr in water, 20 °C|GR_NOT_SAID|18|2",
        "14.1 g in air, 13.08 g in water|WATER_TEMPERATURE|0|31", "14.1 g in air, 13.08 g in water, 68 °F|WATER_TEMPERATURE|33|5",
        "14.1 g in air, 13.08 g in water, 68 °C|WATER_TEMPERATURE|33|5", "13.1 g in air, 14.08 g in water, 20 °C|NOT_LIGHTER_IN_WATER|0|38",
        "14.1 g in air, 14.1 g in water, 20 °C|NOT_LIGHTER_IN_WATER|0|37", "13.78 mm|UNIT_OF_ANOTHER_KIND|6|2"})
    void refused(String text, ReadingFault fault, int offset, int length) {
        Remark remark = Hints.refusal(Kind.DENSITY, text, "");
        assertEquals(fault, remark.fault(), remark.what());
        assertEquals(offset + "+" + length, remark.offset() + "+" + remark.length(), remark.what());
    }

    @ParameterizedTest(name = "{0} prints {1}")
    @CsvSource({"254 mm², 254 mm²", "2.54 cm2, 254 mm²", "c. 254.4 sq. mm, c. 254 mm²", "250 square millimetres, 250 mm²"})
    void surface(String text, String printed) {
        assertEquals(printed, Hints.printed(Kind.SURFACE, text, ""));
    }
}
