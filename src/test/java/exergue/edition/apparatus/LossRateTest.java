package exergue.edition.apparatus;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.dating.DatingParser;
import exergue.dating.Parsed;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked by hand from the formulas, which are R. Reece's (1995) and P. J. Casey's (1986), both from memory. */
class LossRateTest {

    @ParameterizedTest
    @CsvSource({"8, 33, 242.4", "1, 3, 333.3", "5, 5, 1000.0", "1, 16, 62.5"})
    void perThousandFromMemoryOfReece(int coins, int all, String expected) {
        assertEquals(expected, LossRate.perThousand(coins, all).toPlainString());
    }

    @ParameterizedTest
    @CsvSource({"8, 28, 33, 8.66", "1, 10, 100, 1.00", "3, 4, 16, 46.88"})
    void perThousandAndYearFromMemoryOfCasey(int coins, int years, int all, String expected) {
        assertEquals(expected, LossRate.perYear(coins, years, all).toPlainString());
    }

    @ParameterizedTest
    @CsvSource({"-0350~/-0321~, 29", "-0026/0014, 40", "0041, 1", "-0350/.., -1"})
    void yearsFromTheFirstToTheLast(String edtf, int expected) {
        assertEquals(expected, PeriodTable.years(((Parsed.Accepted) DatingParser.parse(edtf)).dating()).orElse(-1));
    }
}
