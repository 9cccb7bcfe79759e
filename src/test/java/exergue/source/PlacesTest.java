package exergue.source;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.model.Inline;
import exergue.model.Prose;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A finding points at the very characters it means, whatever stands before them. */
class PlacesTest {

    private static final String COIN = "id: lk-1\ntype: owl\n";

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "measured: {by: bench, weight: 3.O7 g}         | 3:31 ",
        "measured: {by: bench, weight: '3.O7 g'}       | 3:32 ",
        "measured: {by: bench, weight: \"3.O7 g\"}     | 3:32 ",
        "measured: {\"by\": 'bench', weight: 3.O7 g}   | 3:35 ",
    })
    void theFaultInAReadingIsPointedAt(String line, String start) {
        Place place = only(COIN + line + "\n").place();
        String[] lineAndColumn = start.strip().split(":");
        assertEquals(Integer.parseInt(lineAndColumn[0]), place.line());
        int column = Integer.parseInt(lineAndColumn[1]);
        assertEquals(true, place.column() >= column && place.column() + place.length() <= column + 6, place + " " + place.length());
    }

    @Test
    void columnsCountCharactersNotBytesOrHalves() {
        // U+10198 is outside the first plane: two chars in Java, one character to a reader
        Finding finding = only(COIN + "find: {spot: quay, context: \"\uD800\uDD98\uD800\uDD98\", size: 1}\n");
        assertEquals("coins/lk-1.yaml:3:35", finding.place().toString());
    }

    @Test
    void windowsLineEndsAndAByteOrderMarkMoveNothing() {
        Finding finding = only("\uFEFF" + (COIN + "number: twelve\n").replace("\n", "\r\n"));
        assertEquals(new Place("coins/lk-1.yaml", 3, 9, 6), finding.place());
    }

    @Test
    void aCrossReferenceInABlockOfProseIsPointedAt() {
        String text = COIN + "note: |\n  First words.\n\n  Like *the* coin [coin:lk-9] and [coin:lk-9].\n";
        Prose.Paragraph paragraph = (Prose.Paragraph) Trees.read(Trees.with("coins/lk-1.yaml", text)).catalogue().orElseThrow()
                .coins().get(0).note().get(1);
        List<String> places = paragraph.runs().stream().filter(Inline.CrossReference.class::isInstance)
                .map(run -> ((Inline.CrossReference) run).place().toString()).toList();
        assertEquals(List.of("coins/lk-1.yaml:6:19", "coins/lk-1.yaml:6:35"), places);
    }

    private static Finding only(String coin) {
        List<Finding> findings = Trees.findings("coins/lk-1.yaml", coin).all();
        assertEquals(1, findings.size(), findings.toString());
        return findings.get(0);
    }
}
