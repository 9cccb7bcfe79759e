package exergue.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SummaryTest {

    /** Position (n + 1/3) p + 1/3, worked by hand from definition 8 of Hyndman and Fan 1996. */
    @ParameterizedTest
    @CsvSource({"9, 0.25, 2.666667", "9, 0.5, 5", "9, 0.75, 7.333333", "4, 0.25, 1.416667", "4, 0.75, 3.583333",
        "1, 0.25, 1", "2, 0.9, 2", "2, 0.1, 1"})
    void quantilesByDefinitionEightOfHyndmanAndFan1996(int n, double p, double expected) {
        double[] figures = new double[n];
        for (int i = 0; i < n; i++) {
            figures[i] = i + 1;
        }
        assertEquals(expected, Summary.quantile(figures, p), 1e-6);
    }

    @Test
    void meanAndStandardDeviationWorkedByHand() {
        Summary summary = Summary.of(List.of(3.0, 1.0, 2.0)).orElseThrow();
        assertEquals(2, summary.mean(), 1e-12);
        assertEquals(1, summary.sd().orElseThrow(), 1e-12);
        assertEquals(1, summary.least());
        assertEquals(3, summary.greatest());
        assertEquals(3, summary.n());
    }

    @Test
    void aSingleFigureHasNoSpreadAndNoFiguresHaveNoSummary() {
        assertTrue(Summary.of(List.of(3.9)).orElseThrow().sd().isEmpty());
        assertTrue(Summary.of(List.of()).isEmpty());
    }
}
