package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.model.Written;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CoverageTest {

    private static final Place PLACE = new Place("types/wolf.yaml", 7, 11, 12);

    private static List<Finding> missing(String text) {
        return Coverage.missing(List.of(new Written<>(text, PLACE))).all();
    }

    @ParameterizedTest
    @ValueSource(strings = {"ΑΡΕΘΑΙΩΝ ϹϘϠ", "ΚΑΛ̣ΛΙϹ̣ΤΡΟ", "⟦ΒΑϹΙΛΕΩϹ⟧", "ἁ̣βᾳὖ", "18 × 17\u202Fmm", "\u20073.87", "6′ ↑ ↓ ↗ ° † ‡ –",
        "“a” ‘b’ «c» „d“", "Ḳ Ṣ ṭ ẓ", "½ ⅓ ¾", "Цар", "two\nlines\tand a tab"})
    void hasTheLettersOfTheTrade(String text) {
        assertEquals(List.of(), missing(text));
    }

    @Test
    void saysWhichLetterIsMissingAndWhere() {
        List<Finding> findings = missing("ΛΥ☧ΚΑΙ ☧ א");
        assertEquals(List.of("missing-letter", "missing-letter"), findings.stream().map(f -> f.code().id()).toList());
        assertEquals(new Place("types/wolf.yaml", 7, 13, 1), findings.get(0).place());
        assertTrue(findings.get(0).what().contains("“☧” (U+2627, chi rho)"), findings.get(0).what());
        assertEquals(new Place("types/wolf.yaml", 7, 20, 1), findings.get(1).place());
    }

    @Test
    void aWordOfAnotherScriptIsOneFinding() {
        List<Finding> findings = missing("legend שקל and קל");
        assertEquals(1, findings.size(), findings::toString);
        assertEquals(new Place("types/wolf.yaml", 7, 18, 3), findings.get(0).place());
        assertEquals("The book's face lacks letters of “שקל”: “ש”, “ק”, “ל” (the first is U+05E9, hebrew letter shin).", findings.get(0).what());
    }

    @Test
    void aChineseCharacterIsCalledOne() {
        assertEquals("The book's face has no “漢” (U+6F22, a Chinese character).", missing("漢").get(0).what());
    }

    @Test
    void countsALetterBeyondTheFirstPlaneOnce() {
        assertEquals(new Place("types/wolf.yaml", 7, 13, 1), missing("𐅃 ☧").get(1).place());
        assertEquals(new Place("types/wolf.yaml", 7, 11, 2), missing("𐅃☧").get(0).place());
    }
}
