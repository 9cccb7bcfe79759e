package exergue.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrinterTest {

    @ParameterizedTest(name = "{0} with a step of {1} prints as {2}: seen, {3}")
    @CsvSource({"10.9728, 0.3048, 11.0, 'NIST SP 811 B.7.2, 36 ft in metres'",
            "91.44, 2.54, 91, 'NIST LC 1137, 36 in in centimetres'",
            "101.854, 0.254, 101.9, 'NIST LC 1137, 40.1 in in centimetres'",
            "3.985132965, 0.006479891, 3.985, 'calculated by the same rule, 61.5 grains in grams'"})
    void aConvertedFigureIsGoodToItsStep(BigDecimal value, BigDecimal step, String printed, String source) {
        PrintForm fine = new PrintForm(6, 6, RoundingMode.HALF_EVEN, ".", " ", "h");
        assertEquals(printed, Printer.figure(Kind.WEIGHT, new Quantity(value, Units.GRAM, step), fine));
    }

    @ParameterizedTest(name = "{0} to a tenth is {1} (even) or {2} (up): from memory, ISO 80000-1:2009, Annex B")
    @CsvSource({"12.223, 12.2, 12.2", "12.251, 12.3, 12.3", "12.275, 12.3, 12.3", "12.25, 12.2, 12.3", "12.35, 12.4, 12.4"})
    void rounding(String value, String even, String up) {
        assertEquals(even, tenth(value, RoundingMode.HALF_EVEN));
        assertEquals(up, tenth(value, RoundingMode.HALF_UP));
    }

    private static String tenth(String value, RoundingMode rounding) {
        return Printer.print(Hints.read(Kind.WEIGHT, value + " g", ""), new PrintForm(1, 0, rounding, ".", " ", "h")).figure();
    }

    @ParameterizedTest(name = "{0} {1} [{2}] prints as {3}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
            "WEIGHT|3.9 g||3.9 g", "WEIGHT|3.90 g||3.90 g", "WEIGHT|4 g||4 g", "WEIGHT|3.875 g||3.88 g",
            "WEIGHT|59.7 grains||3.87 g", "WEIGHT|61.5 grains||3.99 g", "WEIGHT|60 grains||3.89 g",
            "WEIGHT|2 dwt 11 gr||3.82 g", "WEIGHT|c. 3.9g||c. 3.9 g", "WEIGHT|<3.9 g||< 3.9 g",
            "WEIGHT|> 3.9 g||> 3.9 g", "WEIGHT|3.9 g ?||3.9? g", "WEIGHT|1 mg||0.001 g",
            "WEIGHT|3.87 g|step=0.1|3.9 g", "WEIGHT|1 livre||490 g",
            "WEIGHT|3.87\u202Fg||3.87 g", "WEIGHT|3.87\u2009g||3.87 g",
            "DIAMETER|17.5 mm||18 mm", "DIAMETER|18 x 17 mm||18 × 17 mm", "DIAMETER|18x17mm||18 × 17 mm",
            "DIAMETER|18 mm by 17 mm||18 × 17 mm", "DIAMETER|17–19 mm||17–19 mm", "DIAMETER|17 to 19 mm||17–19 mm",
            "DIAMETER|17.6-18.2 mm||18 mm", "DIAMETER|0.70 in||18 mm", "DIAMETER|½ in||13 mm", "DIAMETER|1\"||25 mm",
            "DIAMETER|1-3/16 in||30 mm", "DIAMETER|18|unit=mm|18 mm", "DIAMETER|c. 18 × 17 mm||c. 18 × 17 mm",
            "DIAMETER|0.4 mm||0.4 mm", "THICKNESS|2.1 mm||2.1 mm", "THICKNESS|2.14 mm||2.1 mm", "THICKNESS|2-3 mm||2–3 mm",
            "AXIS|12 h||12 h", "AXIS|0°||12 h", "AXIS|359°||12 h", "AXIS|344°||11 h", "AXIS|345°||11½ h",
            "AXIS|346°||12 h", "AXIS|12:30||12½ h", "AXIS|0.5 h||12½ h", "AXIS|6½ h||6½ h", "AXIS|6.5 h||6½ h",
            "AXIS|6 o’clock||6 h", "AXIS|↓?||6? h"})
    void figures(Kind kind, String text, String convention, String printed) {
        assertEquals(printed, Hints.printed(kind, text, convention));
    }

    @Test
    void theEndsOfARangeAreRoundedAlike() {
        PrintForm tenths = new PrintForm(2, 1, RoundingMode.HALF_EVEN, ".", " ", "h");
        assertEquals("17–18", Printer.print(Hints.read(Kind.DIAMETER, "17-18.4 mm", ""), tenths).figure());
        assertEquals("18", Printer.print(Hints.read(Kind.DIAMETER, "18.1-18.3 mm", "step=1"), tenths).figure());
        assertEquals("25", Printer.print(Hints.read(Kind.DIAMETER, "25.1 mm - 1 in", ""), tenths).figure());
    }
}
