package exergue.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import exergue.Exergue;
import exergue.Progress;
import exergue.files.MemoryTree;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The catalogue that is timed is one that the program has nothing to say against. */
class MakeCatalogueTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 7, 500})
    void everySizeIsWithoutErrors(int coins) throws IOException {
        Exergue.Checked checked = Exergue.check(MemoryTree.ofText(MakeCatalogue.files(coins)), Progress.SILENT);
        assertFalse(checked.findings().hasErrors(), () -> checked.findings().all().toString());
        Exergue.Made made = Exergue.typeset(checked, new ByteArrayOutputStream(), Progress.SILENT);
        assertEquals(coins, made.publication().orElseThrow().rows().size());
    }

    @ParameterizedTest
    @ValueSource(ints = {120})
    void theSameNumberGivesTheSameFiles(int coins) {
        assertEquals(MakeCatalogue.files(coins), MakeCatalogue.files(coins));
        assertEquals(coins, MakeCatalogue.files(coins).keySet().stream().filter(f -> f.startsWith("coins/")).count());
    }
}
