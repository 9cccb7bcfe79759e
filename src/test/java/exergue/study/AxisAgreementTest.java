package exergue.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AxisAgreementTest {

    @ParameterizedTest
    @CsvSource({"6, 6, 1, 1", "12, 1, 0, 1", "1, 12, 0, 1", "11, 1, 0, 0", "6, 6.4, 1, 1", "0, 12, 1, 1", "5, 7, 0, 0"})
    void anAxisIsAnHourFromItsNeighboursOnTheClock(double first, double second, int equal, int withinOneHour) {
        assertEquals(new AxisAgreement(1, equal, withinOneHour), new AxisAgreement(0, 0, 0).and(first, second));
    }
}
