package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.finding.Finding;
import exergue.finding.Place;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a printer asks about, picture by picture. */
class PressCheckTest {

    private static final float MILLIMETRE = 72 / 25.4f;

    private static List<Finding> findings(int pages, PlacedPicture... pictures) {
        return PressCheck.look(SampleBook.of(2, 4), Map.of("lk-1", new Place("coins/lk-1.yaml", 7, 1, 0)),
                new SetPages(pages, 0, Set.of(), Map.of()), List.of(pictures)).all();
    }

    private static String codes(List<Finding> findings) {
        return findings.stream().map(finding -> finding.code().id()).sorted().collect(Collectors.joining(" "));
    }

    private static PlacedPicture picture(int pixels, float millimetres, float fromEdge, int bits, int colours) {
        float size = millimetres * MILLIMETRE;
        float left = fromEdge * MILLIMETRE;
        return new PlacedPicture("photographs/obv 3.jpg", 4, pixels, pixels, size, size, left, 300, 300, 300, bits, colours);
    }

    /** 300 and 600 pixels an inch as printers' guides ask for; 25 mm at 300 are 295.3 pixels, so 296. */
    @ParameterizedTest
    @CsvSource({"296, 25, 8, 1, ''", "295, 25, 8, 1, low-resolution", "590, 25, 1, 1, low-resolution",
        "591, 25, 1, 1, ''", "300, 25, 8, 3, rgb-pictures"})
    void pixelsAndColours(int pixels, float millimetres, int bits, int colours, String expected) {
        assertEquals(expected, codes(findings(32, picture(pixels, millimetres, 20, bits, colours))));
    }

    @ParameterizedTest
    @CsvSource({"0, no-bleed", "-3, no-bleed", "0.3, no-bleed", "3, ''"})
    void distanceFromTheTrimmedEdge(float millimetres, String expected) {
        assertEquals(expected, codes(findings(32, picture(400, 25, millimetres, 8, 1))));
    }

    @Test
    void theFindingNamesTheCoinsFileAndBothNumbers() {
        Finding finding = findings(16, picture(150, 25, 20, 8, 1)).get(0);
        assertEquals("coins/lk-1.yaml", finding.place().file());
        assertEquals("“photographs/obv 3.jpg” has 150 pixels for 25 mm, that is 152 an inch; a photograph needs 300.",
                finding.what());
        assertEquals("Give the picture with at least 296 pixels across, or print it smaller. More pixels made by a "
                + "program out of the same picture do not help.", finding.remedy());
    }

    @Test
    void aPicturePrintedTwiceIsJudgedOnceAtItsLargest() {
        List<Finding> findings = findings(16, picture(150, 10, 20, 8, 1), picture(150, 25, 20, 8, 1));
        assertEquals("low-resolution", codes(findings));
        assertEquals(true, findings.get(0).what().contains("for 25 mm"));
    }

    @ParameterizedTest
    @CsvSource({"16, ''", "48, ''", "58, '2, 6 or 6'", "60, '0, 4 or 4'", "8, '0, 0 or 8'"})
    void sheets(int pages, String blank) {
        List<Finding> findings = findings(pages);
        assertEquals(blank.isEmpty() ? "" : "sheets-not-filled", codes(findings));
        findings.forEach(f -> assertEquals("The book has " + pages + " pages. Sheets of 4, 8 or 16 pages would leave "
                + blank + " pages blank at the end.", f.what()));
    }
}
