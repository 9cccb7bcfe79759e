package exergue.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorkingTest {

    @ParameterizedTest(name = "{0} {1} [{2}]: {3}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
            "WEIGHT|59.7 gr|gr=grains|read as: 59.7 grains; factor: 1 grain = 0.06479891 g; exact: 3.868494927 g; "
                    + "step: 0.006479891 g; interval: 3.8653 to 3.8717 g; printed: 3.87 g",
            "WEIGHT|2 dwt 11 gr||read as: 2 pennyweights + 11 grains; factor: 1 pennyweight = 1.55517384 g; "
                    + "factor: 1 grain = 0.06479891 g; exact: 3.82313569 g; step: 0.06479891 g; interval: 3.791 to 3.856 g; printed: 3.82 g",
            "WEIGHT|3.9 g||read as: 3.9 grams; exact: 3.9 g; step: 0.1 g; interval: 3.85 to 3.95 g; printed: 3.9 g",
            "WEIGHT|c. 3.9 g||read as: 3.9 grams; exact: 3.9 g; step: 0.1 g; "
                    + "interval: wider than its step: the record itself is not sure; printed: c. 3.9 g",
            "DIAMETER|8 lignes||read as: 8 Paris lignes; factor: 1 Paris ligne = 1000/443.296 mm; exact: 18.046632498375… mm; "
                    + "step: 2.255829062296… mm; interval: 16.9 to 19.2 mm; printed: 18 mm",
            "DIAMETER|size 5|scale=prime-1861|read as: size 5 of Mionnet’s scale as printed by Prime in 1861; "
                    + "factor: size 5 of Mionnet’s scale as printed by Prime in 1861 = 28.2 mm; exact: 28.2 mm; step: 1 mm; "
                    + "interval: 27.7 to 28.7 mm; printed: 28 mm",
            "DIAMETER|18 x 17.5 mm||read as: 18 millimetres × 17.5 millimetres; exact: 18 × 17.5 mm; step: 1 × 0.1 mm; "
                    + "interval: 17.5 to 18.5; 17.45 to 17.55 mm; printed: 18 × 18 mm",
            "AXIS|150°|anticlockwise|read as: 150 degrees; factor: 1 degree = 1/30 h; "
                    + "turning: figures of this source count anticlockwise; the book counts clockwise; exact: 7 h; "
                    + "step: 0.033333333333… h; interval: 6.983 to 7.017 h; printed: 7 h",
            "AXIS|↙||read as: the arrow ↙, 5 eighths of a turn; factor: 1 eighth of a turn = 3/2 h; exact: 7.5 h; step: 1.5 h; "
                    + "interval: 6.8 to 8.2 h; printed: 7½ h",
            "AXIS|↑⇓||read as: the arrow ↓, 4 eighths of a turn; factor: 1 eighth of a turn = 3/2 h; exact: 6 h; step: 1.5 h; "
                    + "interval: 5.2 to 6.8 h; printed: 6 h",
            "AXIS|missing: worn||no figure: missing; reason: worn"})
    void lines(Kind kind, String text, String hint, String expected) {
        Working working = Working.of(kind, text, Hints.convention(hint), PrintForm.DEFAULT);
        assertEquals(expected, working.lines().stream().skip(2).filter(line -> !line.label().equals("its source"))
                .map(line -> line.label() + ": " + line.text()).collect(Collectors.joining("; "))
                .replace('\u202F', ' ').replace('\u00A0', ' '));
    }

    @Test
    void everyFactorHasItsSource() {
        Working working = Working.of(Kind.WEIGHT, "1 gros 2 denier", Convention.UNDECLARED, PrintForm.DEFAULT);
        assertEquals(2, working.lines().stream().filter(line -> line.label().equals("its source")
                && line.text().contains("Tralles")).count());
    }

    @Test
    void aRefusedTextShowsWhatWasRecordedAndWhy() {
        Working working = Working.of(Kind.WEIGHT, "59.7 gr", Convention.UNDECLARED, PrintForm.DEFAULT);
        assertEquals("59.7 gr", working.lines().get(0).text());
        assertTrue(working.remarks().get(0).fault() == ReadingFault.GR_NOT_SAID);
    }
}
