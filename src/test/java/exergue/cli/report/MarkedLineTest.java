package exergue.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Carets stand under the value, whatever stands before it. */
class MarkedLineTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', ignoreLeadingAndTrailingWhitespace = false, value = {
        // line                      |column|length| blanks and carets
        "weight: 3.87 g|9|6|        ^^^^^^",
        "weight: 3.87 g|9|0|        ^",
        "weight: 3.87 g|15|1|              ^",
        "weight: 3.87 g|99|5|              ^",
        "weight: 3.87 g|1|99|^^^^^^^^^^^^^^",
        "e\u0301te\u0301 x|7|1|    ^",
        "\uD83D\uDE00 x|3|1|   ^",
        "\u6F22\u5B57 x|1|2|^^^^",
        "\u6F22\u5B57 x|4|1|     ^",
    })
    void caretsStandUnderTheValue(String line, int column, int length, String marks) {
        assertEquals(marks, MarkedLine.of(line, column, length).marks());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"\\tweight: x|2|6|4", "a\\tb\\tx|5|1|10", "\\t\\tx|3|1|8"})
    void tabsAreFourBlanksInBothLines(String written, int column, int length, int blanks) {
        MarkedLine marked = MarkedLine.of(written.replace("\\t", "\t"), column, length);
        assertEquals(" ".repeat(blanks) + "^".repeat(length), marked.marks());
        assertEquals(written.replace("\\t", "    "), marked.shown());
    }

    @Property
    void theCaretIsAlwaysWithinSight(@ForAll String line, @ForAll @IntRange(min = 0, max = 300) int column,
                                     @ForAll @IntRange(min = 0, max = 300) int length) {
        MarkedLine marked = MarkedLine.of(line, column, length);
        assertTrue(marked.marks().contains("^"));
        assertTrue(marked.marks().length() <= 2 * 102 + 102 * 2, marked.marks());
        assertEquals(-1, marked.shown().indexOf('\n'));
    }
}
