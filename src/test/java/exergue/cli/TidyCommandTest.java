package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code tidy} on a folder. */
class TidyCommandTest {

    @TempDir
    private Path folder;
    private Path coin;

    @BeforeEach
    void aTidyCatalogue() {
        Ran.command("start", folder.resolve("mine").toString());
        Ran.command("tidy", folder.resolve("mine").toString());
        coin = folder.resolve("mine/coins/ov-2.yaml");
    }

    @Test
    void whatIsTidyIsCalledSo() {
        Ran ran = tidy("--check");
        assertEquals(0, ran.code(), ran.all());
        assertTrue(ran.out().endsWith(": everything is tidy\n"), ran.out());
        assertEquals(0, Ran.command("check", folder.resolve("mine").toString()).code());
    }

    @Test
    void checkNamesTheFileAndChangesNothing() throws IOException {
        String tidy = Files.readString(coin);
        String untidy = tidy.replace("type: ", "type:   ");
        Files.writeString(coin, untidy);
        Ran ran = tidy("--check");
        assertEquals(1, ran.code(), ran.all());
        assertTrue(ran.out().startsWith("coins/ov-2.yaml: not tidy\n"), ran.out());
        assertEquals(untidy, Files.readString(coin));
        assertEquals(0, tidy().code());
        assertEquals(tidy, Files.readString(coin));
    }

    @Test
    void aFileWithErrorsIsLeftAndNamed() throws IOException {
        Files.writeString(coin, "id: [ov-2\n");
        Ran ran = tidy();
        assertEquals(1, ran.code());
        assertTrue(ran.out().startsWith("coins/ov-2.yaml: left as it is. It has errors; the command check says which.\n"), ran.out());
        assertEquals("id: [ov-2\n", Files.readString(coin));
    }

    private Ran tidy(String... more) {
        String source = folder.resolve("mine").toString();
        return more.length == 0 ? Ran.command("tidy", source) : Ran.command("tidy", source, more[0]);
    }
}
