package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.typeset.ColumnBreaks.Row;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColumnBreaksTest {

    private static List<Row> even(int rows) {
        return IntStream.range(0, rows).mapToObj(i -> new Row(10, 0)).toList();
    }

    @ParameterizedTest
    @CsvSource({"9, 3, '[0, 3, 6, 9]'", "10, 3, '[0, 4, 8, 10]'", "2, 4, '[0, 1, 2]'", "1, 3, '[0, 1]'"})
    void balancedColumnsAreAsShortAsTheyCanBe(int rows, int columns, String expected) {
        assertEquals(expected, new ColumnBreaks(even(rows), columns).balanced(0, 1000).toString());
    }

    @ParameterizedTest
    @CsvSource({"20, 3, 50, '[0, 5, 10, 15]'", "20, 3, 55, '[0, 5, 10, 15]'", "20, 3, 4, '[0, 1, 2, 3]'"})
    void aPageIsFilledColumnByColumn(int rows, int columns, int height, String expected) {
        assertEquals(expected, new ColumnBreaks(even(rows), columns).filled(0, height).toString());
    }

    @Property
    void noRowIsLostAndNoColumnHigherThanAsked(@ForAll @Size(min = 1, max = 60) List<@IntRange(min = 5, max = 40) Integer> heights,
                                               @ForAll @IntRange(min = 1, max = 5) int columns,
                                               @ForAll @IntRange(min = 40, max = 200) int page) {
        ColumnBreaks breaks = new ColumnBreaks(heights.stream().map(height -> new Row(height, height % 3 == 0 ? 5 : 0)).toList(), columns);
        int at = 0;
        while (at < heights.size()) {
            List<Integer> starts = breaks.takesAll(at, page) ? breaks.balanced(at, page) : breaks.filled(at, page);
            assertEquals(at, starts.get(0));
            assertEquals(starts.stream().sorted().distinct().toList(), starts);
            assertTrue(breaks.height(starts) <= page && starts.size() <= columns + 1, starts.toString());
            at = starts.get(starts.size() - 1);
        }
        assertEquals(heights.size(), at);
    }
}
