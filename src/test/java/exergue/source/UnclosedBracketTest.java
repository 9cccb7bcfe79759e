package exergue.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.MemoryTree;
import exergue.finding.Finding;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The bracket that is named is the one that stands open, wherever the file ends after it. */
class UnclosedBracketTest {

    @ParameterizedTest
    @CsvSource({"'title: [', [, 1, 8", "'title: [\n', [, 1, 8", "'title: [\n\nlanguage: en\n', [, 1, 8", "'title: {en: A, ', {, 1, 8",
        "'a: b\ntitle: [one, }\n', [, 2, 8", "'a: {𐆖: [\n', [, 1, 8"})
    void isNamedWithItsPlace(String text, String bracket, int line, int column) throws Exception {
        Finding finding = SourceReader.read(MemoryTree.ofText(Map.of("catalogue.yaml", text))).findings().all().stream()
                .filter(one -> one.code().id().equals("unclosed-bracket")).findFirst().orElseThrow();
        assertTrue(finding.what().startsWith("The bracket “" + bracket + "” "), finding.what());
        assertEquals(line + ":" + column, finding.place().line() + ":" + finding.place().column());
    }
}
