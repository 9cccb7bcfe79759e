package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineBreaksTest {

    /** A bar stands where a line may end. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "two words; two |words",
        "two  spaces; two  |spaces",
        "Museum’s; Museum’s",
        "man-headed bull; man-|headed |bull",
        "Saint-Orlac 15; Saint-Orlac |15",
        "Rhine–Moselle; Rhine–|Moselle",
        "17–19 mm; 17–19 mm",
        "of about 9.20 g, with its half; of |about |9.20 g, |with |its |half",
        "3.87\u202Fg, 18\u202Fmm; 3.87\u202Fg, |18\u202Fmm",
        "18\u00A0×\u00A017; 18\u00A0×\u00A017",
        "\u20073.9; \u20073.9",
        "O12/R34; O12/R34",
        "inv. 19-02/7; inv. |19-02/7",
        "as no. 42 shows; as |no. 42 |shows",
        "https://example.org/a/b; https://example.org/|a/|b",
        "war—and peace; war—|and |peace",
        "hy\u00ADphen; hy\u00AD|phen",
        "-1; -1",
        "O1/–; O1/–"})
    void breaksOnlyWhereAPrinterWould(String text, String expected) {
        LineBreaks breaks = new LineBreaks();
        breaks.setText(text);
        List<String> pieces = new ArrayList<>();
        int from = 0;
        for (int to = breaks.next(); to >= 0; to = breaks.next()) {
            pieces.add(text.substring(from, to));
            from = to;
        }
        assertEquals(expected, String.join("|", pieces));
    }
}
