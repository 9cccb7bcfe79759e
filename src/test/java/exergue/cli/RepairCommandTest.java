package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code check --repair} on a folder. */
class RepairCommandTest {

    @TempDir
    private Path folder;
    private Path source;
    private Path coin;
    private String before;

    @BeforeEach
    void aCatalogueWithASlip() throws IOException {
        source = folder.resolve("mine");
        Ran.command("start", source.toString());
        coin = source.resolve("coins/ov-8.yaml");
        before = Files.readString(coin) + "countermark: heron  in circle   # as on ov-7\n";
        Files.writeString(coin, before);
    }

    @Test
    void itWritesTheFileAndShowsTheLine() throws IOException {
        Ran ran = Ran.command("check", "--repair", source.toString());
        assertEquals(0, ran.code(), ran.all());
        assertTrue(ran.out().contains("  - countermark: heron  in circle   # as on ov-7\n  + countermark: heron in circle   # as on ov-7\n\n"
                + "1 line repaired.\n"), ran.out());
        assertEquals(before.replace("heron  in", "heron in"), Files.readString(coin));
        assertFalse(ran.out().contains("[stray-space]\n    "), ran.out());
        assertTrue(Ran.command("check", "--repair", source.toString()).out().startsWith("Nothing can be repaired.\n"));
    }

    @Test
    void itOnlyShowsWhereThatIsAskedFor() throws IOException {
        Ran ran = Ran.command("check", "--show-repairs", source.toString());
        assertTrue(ran.out().contains("1 line can be repaired; --repair does it.\n"), ran.out());
        assertTrue(ran.out().contains("0 errors, 1 warning"), ran.out());
        assertEquals(before, Files.readString(coin));
    }

    @Test
    void machinesAreNotDisturbed() {
        Ran ran = Ran.command("check", "--show-repairs", "--format", "json", source.toString());
        assertTrue(ran.out().startsWith("{"), ran.out());
        assertTrue(ran.err().contains("1 line can be repaired"), ran.err());
    }
}
