package exergue.source;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.finding.Finding;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whoever does exactly what the remedy says has a line that is read. */
class RemedyToTheLetterTest {

    private static final Pattern QUOTED = Pattern.compile("\"[^\"]+\"");
    private static final Pattern TYPOGRAPHIC = Pattern.compile("(?<=: )“([^”]+)”\\.$");

    @ParameterizedTest
    @ValueSource(strings = {"-", "?", "–", "---", "lost", "n/a", "missing", "not applicable", "''", "3.87 g ±0.01"})
    void anAbsenceIsWrittenAsItIsQuoted(String weight) {
        Matcher quoted = QUOTED.matcher(only("weight: " + weight).remedy());
        assertEquals(true, quoted.find(), weight);
        assertEquals(List.of(), found("weight: " + quoted.group()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"weight:\u00A03.87\u00A0g", "weight:\u202F3.87 g"})
    void aNoBreakSpaceAfterTheColonIsToldFromNone(String line) {
        Finding finding = only(line);
        assertEquals("no-space-after-colon", finding.code().id());
        assertEquals("After the colon of “weight” stands a no-break space, which looks like a space and does not count as one.", finding.what());
        Matcher written = TYPOGRAPHIC.matcher(finding.remedy());
        assertEquals(true, written.find(), finding.remedy());
        assertEquals(List.of(), found(written.group(1)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"180", "90", "330"})
    void degreesWithoutTheirSignAreOffered(String degrees) {
        assertEquals("Hours go from 1 to 12; if degrees are meant, write " + degrees + "°.", only("axis: " + degrees + " h").remedy());
    }

    private static Finding only(String line) {
        List<Finding> found = found(line);
        assertEquals(1, found.size(), line + ": " + found);
        return found.get(0);
    }

    private static List<Finding> found(String line) {
        String coin = "id: lk-1\ntype: owl\nmeasured:\n  by: bench\n  " + line + "\n";
        return Trees.read(Trees.with("coins/lk-1.yaml", coin)).findings().all();
    }
}
