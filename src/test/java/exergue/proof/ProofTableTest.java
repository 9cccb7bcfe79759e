package exergue.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Enclosed;
import exergue.Exergue;
import exergue.Exergue.Checked;
import exergue.Prints;
import exergue.Progress;
import exergue.bench.MakeCatalogue;
import exergue.files.MemoryTree;
import exergue.photo.print.Darkroom;
import exergue.proof.Proof.State;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What lies on the table, step by step, as the two who work at the desk lay it there. */
class ProofTableTest {

    private static final String EARLY = "coins/t0001/c00008.yaml";
    private static final String LATE = "coins/t0036/c00180.yaml";

    private final Map<String, String> files = new TreeMap<>(MakeCatalogue.files(200));
    private final ProofTable table = new ProofTable();

    @AfterEach
    void close() {
        table.close();
    }

    private Checked checked() throws IOException {
        return Exergue.pictures(Exergue.check(MemoryTree.ofText(files), Progress.SILENT), Darkroom.inMemory(), Progress.SILENT);
    }

    private void whole(boolean current) throws IOException {
        Checked checked = checked();
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        Exergue.Made made = Exergue.typeset(checked, Enclosed.NOTHING, Prints.forScreen(pdf), Progress.SILENT);
        table.showWhole(checked, made, pdf.toByteArray(), () -> current);
    }

    private Proof save(String file, String note) throws IOException {
        files.put(file, files.get(file) + "note: " + note + "\n");
        Checked checked = checked();
        table.showFirst(checked, table.checked(checked, Set.of(file)).orElseThrow());
        return table.now();
    }

    private boolean says(Proof proof, String anchor, String words) throws IOException {
        Leaf leaf = proof.leaves().get(proof.firstLeaves().get(anchor));
        return table.set(leaf.set()).orElseThrow().lines(leaf.page()).stream().anyMatch(line -> line.text().contains(words));
    }

    @Test
    void ofTwoEntriesSavedBeforeTheBookIsSetBothStayAsSaved() throws IOException {
        table.checked(checked(), Set.of());
        whole(true);
        int pages = table.now().leaves().size();
        save(EARLY, "Seen early.");
        Proof both = save(LATE, "Seen late.");
        assertEquals(Optional.of("c00180"), both.changed());
        assertTrue(says(both, "c00180", "Seen late."));
        assertTrue(says(both, "c00008", "Seen early."), "the page is not that of before again");
        assertEquals(pages, both.leaves().size());
        whole(true);
        assertFalse(table.now().leaves().stream().anyMatch(Leaf::fresh));
        assertTrue(says(table.now(), "c00008", "Seen early.") && says(table.now(), "c00180", "Seen late."));
    }

    @Test
    void aBookThatIsNoLongerWantedIsNotShownNorIsItsTrouble() throws IOException {
        table.checked(checked(), Set.of());
        Proof before = table.now();
        whole(false);
        table.trouble("The disk is full.", () -> false);
        table.doing("Making the photographs ready: 20 of 40 coins", () -> false);
        assertEquals(before, table.now());
        table.doing("Making the photographs ready: 20 of 40 coins", () -> true);
        assertEquals(before.number() + 1, table.now().number());
        table.doing("", () -> true);
        assertEquals("", table.now().doing());
        table.trouble("The disk is full.", () -> true);
        assertEquals(State.OF_BEFORE, table.now().state());
    }

    /** Whoever else is logged in to the machine could open the address. */
    @Test
    void noFindingQuotesAnExactFindSpot() throws IOException {
        files.put("find-spots.yaml", "dune:\n  name: Coast\n  kind: hoard\n  exact-place: behind the third dune 48.1375\n");
        table.checked(Exergue.check(MemoryTree.ofText(files), Progress.SILENT), Set.of());
        String told = ProofJson.now(table.now(), List.of(595, 794));
        assertTrue(told.contains("find-spots.yaml"), told);
        assertFalse(told.contains("third dune") || told.contains("48.1375"), told);
    }
}
