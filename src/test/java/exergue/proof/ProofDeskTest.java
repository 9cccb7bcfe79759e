package exergue.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.finding.Severity;
import exergue.proof.Proof.State;
import exergue.typeset.DrawnPages.Line;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What there is to see while somebody writes. */
class ProofDeskTest {

    private static final String COIN = "coins/t0012/c00060.yaml";

    @TempDir
    private Path folder;
    private LiveSource source;
    private Proof first;

    @BeforeEach
    void open() throws Exception {
        source = new LiveSource(folder.resolve("source"), 100).open();
        first = source.awaitSaved();
    }

    @AfterEach
    void close() throws IOException {
        source.close();
    }

    private List<String> text(Proof proof, int leaf) throws IOException {
        Leaf shown = proof.leaves().get(leaf);
        return source.desk().table().set(shown.set()).orElseThrow().lines(shown.page()).stream().map(Line::text).toList();
    }

    private Known known(Proof proof, String id) {
        return proof.entries().stream().filter(entry -> entry.id().equals(id)).findFirst().orElseThrow();
    }

    @Test
    void everyCoinStandsOnALeafAndIsWrittenInAFile() {
        assertEquals(120 + 1, first.entries().size() + 1, "100 coins and 20 types");
        for (Known entry : first.entries()) {
            assertTrue(first.firstLeaves().containsKey(entry.anchor()), entry.toString());
            assertTrue(Files.exists(folder.resolve("source").resolve(entry.place().file())), entry.toString());
        }
        assertEquals("A Catalogue for Timing", first.title());
    }

    @Test
    void thePageOfASavedCoinComesBeforeTheBookAndIsThatOfTheBook() throws Exception {
        source.write(COIN, source.read(COIN) + "note: Seen again.\n");
        Proof fresh = source.await(proof -> proof.leaves().stream().anyMatch(Leaf::fresh));
        assertEquals(State.SETTING, fresh.state());
        assertEquals(Optional.of("c00060"), fresh.changed());
        int leaf = fresh.firstLeaves().get("c00060");
        assertTrue(fresh.leaves().get(leaf).fresh());
        List<String> seen = text(fresh, leaf);
        assertTrue(seen.stream().anyMatch(line -> line.contains("Seen again.")), seen.toString());

        Proof whole = source.await(proof -> proof.number() > fresh.number() && proof.state() == State.AS_SAVED);
        assertEquals(fresh.leaves().get(leaf).folio(), whole.leaves().get(leaf).folio());
        assertEquals(seen, text(whole, leaf));
        assertFalse(whole.leaves().stream().anyMatch(Leaf::fresh));
    }

    @Test
    void anErrorIsToldAndThePagesStay() throws Exception {
        source.write(COIN, source.read(COIN).replace("type: t0012", "type: t0013x"));
        Proof broken = source.await(proof -> proof.state() == State.OF_BEFORE);
        assertEquals(1, broken.findings().count(Severity.ERROR), broken.findings().all().toString());
        assertEquals(COIN, broken.findings().all().get(0).place().file());
        assertEquals(first.leaves(), broken.leaves());
        source.write(COIN, source.read(COIN).replace("t0013x", "t0013"));
        Proof mended = source.await(proof -> proof.number() > broken.number() && proof.state() == State.AS_SAVED);
        assertEquals(0, mended.findings().count(Severity.ERROR));
        assertEquals("type.t0013", known(mended, "c00060").entry());
    }

    @Test
    void aCatalogueThatCannotBeReadKeepsWhatIsThere() throws Exception {
        String text = source.read("catalogue.yaml");
        source.delete("catalogue.yaml");
        Proof without = source.await(proof -> proof.state() == State.OF_BEFORE);
        assertEquals(first.entries(), without.entries());
        assertEquals(first.title(), without.title());
        source.write("catalogue.yaml", text);
        source.await(proof -> proof.number() > without.number() && proof.state() == State.AS_SAVED);
    }

    @Test
    void aNewCoinIsShownAndAGoneOneIsNot() throws Exception {
        source.write("coins/t0012/new.yaml", source.read(COIN).replace("c00060", "new").replace("'61'", "'9999'").replace("R61", "R999"));
        Proof more = source.await(proof -> proof.leaves().stream().anyMatch(Leaf::fresh));
        assertEquals(Optional.of("new"), more.changed());
        assertTrue(more.firstLeaves().containsKey("new"));
        source.delete("coins/t0012/new.yaml");
        Proof fewer = source.await(proof -> proof.number() > more.number() && proof.state() == State.AS_SAVED && proof.entries().size() == 120);
        assertFalse(fewer.firstLeaves().containsKey("new"));
        assertEquals(Optional.empty(), fewer.changed());
    }

    @Test
    void whatIsNoPartOfTheSourceChangesNothing() throws Exception {
        source.write(".hidden/notes.txt", "x");
        source.write("catalogue.yaml", source.read("catalogue.yaml").replace("for Timing", "for Looking"));
        Proof next = source.await(proof -> proof.title().equals("A Catalogue for Looking"));
        assertEquals(first.number() + 1, next.number());
        assertEquals(Optional.empty(), next.changed());
    }

    /** As editors do it that keep a copy. */
    @Test
    void aCopyThatAnEditorKeepsBesideIsNoSecondChange() throws Exception {
        source.write(COIN + "~", source.read(COIN));
        source.write(COIN, source.read(COIN) + "note: Seen again.\n");
        Proof next = source.await(proof -> proof.number() > first.number());
        assertEquals(Optional.of("c00060"), next.changed());
        assertEquals(0, next.findings().count(Severity.WARNING), next.findings().all().toString());
    }

    @Test
    void pagesThatWereLaidAsideAreGone() throws Exception {
        Proof now = first;
        for (int i = 0; i < 5; i++) {
            source.write(COIN, source.read(COIN).replaceAll("note: .*\n", "") + "note: Seen " + i + ".\n");
            int known = now.number();
            now = source.await(proof -> proof.number() > known && proof.state() == State.AS_SAVED);
        }
        assertTrue(source.desk().table().set(now.leaves().get(0).set()).isPresent());
        assertEquals(Optional.empty(), source.desk().table().set(first.leaves().get(0).set()));
    }
}
