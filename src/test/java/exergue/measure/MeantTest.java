package exergue.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeantTest {

    @ParameterizedTest
    @CsvSource({
        "WEIGHT, 3.78, gram, DIGITS_SWAPPED, 3.87 g",
        "WEIGHT, 3.78, gram, DIGITS_SWAPPED, 7.38 g",
        "WEIGHT, 38.7, gram, DECIMAL_POINT, 3.87 g",
        "WEIGHT, 3.87, gram, DECIMAL_POINT, 38.7 g",
        "WEIGHT, 3.37, gram, DIGIT_MISREAD, 3.87 g",
        "WEIGHT, 59.7, gram, OTHER_UNIT, 59.7 gr",
        "WEIGHT, 3.87, grain, OTHER_UNIT, 3.87 g",
        "DIAMETER, 81, millimetre, DIGITS_SWAPPED, 18 mm",
        "DIAMETER, 0.7, millimetre, OTHER_UNIT, 0.7 in",
        "AXIS, 5, hour, MIRRORED, 7 h",
        "AXIS, 12, hour, MIRRORED, 12 h",
        "AXIS, 6, hour, UP_AND_DOWN, 12 h",
        "AXIS, 12, hour, UP_AND_DOWN, 6 h",
        "AXIS, 2.5, hour, UP_AND_DOWN, 8.5 h"})
    void whatMayHaveBeenMeant(Kind kind, String figure, String unit, Slip slip, String meant) {
        assertTrue(Meant.by(read(kind, figure, unit)).stream()
                .anyMatch(one -> one.slip() == slip && one.text().equals(meant)), meant);
    }

    @Test
    void grainsAreConvertedWithTheirFactor() {
        Meant grains = Meant.by(read(Kind.WEIGHT, "59.7", "gram")).stream()
                .filter(one -> one.text().equals("59.7 gr")).findFirst().orElseThrow();
        assertEquals(0, new BigDecimal("3.868494927").compareTo(grains.normal()));
    }

    @Test
    void equalDigitsCannotBeSwapped() {
        assertTrue(Meant.by(read(Kind.WEIGHT, "3.33", "gram")).stream().noneMatch(one -> one.slip() == Slip.DIGITS_SWAPPED));
    }

    private static Reading.Read read(Kind kind, String figure, String unit) {
        Unit known = Units.byId(unit).orElseThrow();
        BigDecimal value = new BigDecimal(figure);
        Quantity recorded = new Quantity(value, known, value.ulp());
        Quantity normal = new Quantity(known.factor().times(value), kind == Kind.WEIGHT ? Units.GRAM
                : kind == Kind.AXIS ? Units.HOUR : Units.MILLIMETRE, known.factor().times(value.ulp()));
        return new Reading.Read(kind, figure, Reading.Form.SINGLE, List.of(recorded), List.of(normal), Reading.Qualifier.NONE);
    }
}
