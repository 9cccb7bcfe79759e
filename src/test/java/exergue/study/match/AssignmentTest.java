package exergue.study.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** The best assignment, against every assignment there is. */
class AssignmentTest {

    @Provide
    static Arbitrary<double[][]> gains() {
        return Arbitraries.integers().between(1, 5).flatMap(rows -> Arbitraries.integers().between(0, 5)
                .flatMap(columns -> Arbitraries.integers().between(-3, 9).list().ofSize(rows * columns).map(cells -> {
                    double[][] gains = new double[rows][columns];
                    for (int i = 0; i < cells.size(); i++) {
                        gains[i / columns][i % columns] = cells.get(i) / 2.0;
                    }
                    return gains;
                })));
    }

    @Property(tries = 300)
    void noAssignmentIsBetter(@ForAll("gains") double[][] gains) {
        Assignment assignment = Assignment.of(gains);
        double sum = 0;
        boolean[] taken = new boolean[gains[0].length];
        for (int row = 0; row < gains.length; row++) {
            int column = assignment.column(row);
            if (column != Assignment.NONE) {
                assertTrue(!taken[column], "a column was given twice");
                taken[column] = true;
                sum += gains[row][column];
            }
        }
        assertEquals(best(gains, 0, new boolean[gains[0].length]), sum, 1e-9);
    }

    @Property(tries = 300)
    void theMarginIsWhatTheNextBestAnswerLacks(@ForAll("gains") double[][] gains) {
        Assignment assignment = Assignment.of(gains);
        double best = best(gains, 0, new boolean[gains[0].length]);
        for (int row = 0; row < gains.length; row++) {
            int column = assignment.column(row);
            if (column != Assignment.NONE) {
                double[][] without = Arrays.stream(gains).map(double[]::clone).toArray(double[][]::new);
                without[row][column] = -1000;
                assertEquals(best - best(without, 0, new boolean[gains[0].length]), assignment.margin(row), 1e-9);
            }
        }
    }

    private static double best(double[][] gains, int row, boolean[] taken) {
        if (row == gains.length) {
            return 0;
        }
        double best = best(gains, row + 1, taken);
        for (int column = 0; column < taken.length; column++) {
            if (!taken[column]) {
                taken[column] = true;
                best = Math.max(best, gains[row][column] + best(gains, row + 1, taken));
                taken[column] = false;
            }
        }
        return best;
    }

    /** Four workers and four jobs, with the cheapest at 13 (invented; as scipy.optimize.linear_sum_assignment 1.10 has it). */
    @Test
    void asScipyHasIt() {
        double[][] costs = {{9, 2, 7, 8}, {6, 4, 3, 7}, {5, 8, 1, 8}, {7, 6, 9, 4}};
        double[][] gains = Arrays.stream(costs).map(row -> Arrays.stream(row).map(cost -> 100 - cost).toArray()).toArray(double[][]::new);
        Assignment assignment = Assignment.of(gains);
        assertEquals(List.of(1, 0, 2, 3), List.of(assignment.column(0), assignment.column(1), assignment.column(2), assignment.column(3)));
    }
}
