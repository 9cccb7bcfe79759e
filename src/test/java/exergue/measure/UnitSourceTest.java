package exergue.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class UnitSourceTest {

    @Test
    void onlyWhatWasLookedUpCountsAsSeen() {
        assertTrue(UnitSource.seen("a law of 1899").seen());
        assertFalse(UnitSource.remembered("a law of 1899").seen());
        assertFalse(UnitSource.custom("common practice, no source").seen());
    }

    @Test
    void theNoteStandsAfterAllThatFollowsFromTheSource() {
        assertEquals("a law of 1899: 24 grains (from memory)",
                UnitSource.remembered("a law of 1899").with(": 24 grains").noted());
        assertEquals("a law of 1899: 24 grains", UnitSource.seen("a law of 1899").with(": 24 grains").noted());
    }

    @Test
    void noTextCarriesTheNoteItself() {
        assertEquals(List.of(), Units.all().stream().map(unit -> unit.source().text())
                .filter(text -> text.contains("memory") || text.endsWith("as quoted")).toList());
    }
}
