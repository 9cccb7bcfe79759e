package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The folder of pages on a real disk, beside the author's own files. */
class WebFolderTest {

    @TempDir
    private Path folder;
    private Path source;
    private Path web;

    @BeforeEach
    void start() {
        source = folder.resolve("source");
        web = source.resolve("book/web");
        Ran.command("start", source.toString());
    }

    private Ran typeset(String... more) {
        String[] words = new String[more.length + 2];
        words[0] = "typeset";
        words[1] = source.toString();
        System.arraycopy(more, 0, words, 2, more.length);
        return Ran.command(words);
    }

    @Test
    void allThreeBooksComeOutOfOneRun() {
        Ran ran = typeset("--web", "--press");
        assertEquals(0, ran.code(), ran.all());
        for (String name : new String[] {"catalogue.pdf", "catalogue-press.pdf", "catalogue.json", "web/index.html",
            "web/coins/ov-3.html", "web/style.css", "web/fonts/OFL.txt", "web/catalogue.csv"}) {
            assertTrue(Files.isRegularFile(source.resolve("book").resolve(name)), name);
        }
    }

    @Test
    void pagesOfACoinThatIsGoneGoTooAndNothingElseDoes() throws IOException {
        typeset("--web");
        Files.writeString(web.resolve("notes.html"), "the author's own");
        Files.writeString(web.resolve("coins/mine.html"), "the author's own");
        Files.delete(source.resolve("coins/ov-4.yaml"));
        Ran ran = typeset("--web");
        assertEquals(0, ran.code(), ran.all());
        assertFalse(Files.exists(web.resolve("coins/ov-4.html")));
        assertTrue(Files.exists(web.resolve("coins/ov-3.html")));
        assertEquals("the author's own", Files.readString(web.resolve("notes.html")));
        assertEquals("the author's own", Files.readString(web.resolve("coins/mine.html")));
    }

    @Test
    void aFailedRunLeavesTheLastPages() throws IOException {
        typeset("--web");
        byte[] before = Files.readAllBytes(web.resolve("coins/ov-4.html"));
        Files.writeString(source.resolve("coins/ov-4.yaml"), "id: ov-4\ntype: no-such-type\n");
        assertEquals(1, typeset("--web").code());
        assertArrayEquals(before, Files.readAllBytes(web.resolve("coins/ov-4.html")));
    }

    /** The books lie inside the source folder; they are no part of it. */
    @Test
    void aSecondRunGivesTheSameBytes() throws IOException {
        typeset("--web", "--press");
        byte[] pdf = Files.readAllBytes(source.resolve("book/catalogue.pdf"));
        byte[] press = Files.readAllBytes(source.resolve("book/catalogue-press.pdf"));
        byte[] page = Files.readAllBytes(web.resolve("index.html"));
        typeset("--web", "--press");
        assertArrayEquals(pdf, Files.readAllBytes(source.resolve("book/catalogue.pdf")));
        assertArrayEquals(press, Files.readAllBytes(source.resolve("book/catalogue-press.pdf")));
        assertArrayEquals(page, Files.readAllBytes(web.resolve("index.html")));
    }

    @Test
    void theNamedStateGoesIntoTheData() throws IOException {
        typeset("--commit", "second proof");
        assertTrue(Files.readString(source.resolve("book/catalogue.json")).contains("\"source-commit\": \"second proof\""));
        typeset("--commit", "");
        assertFalse(Files.readString(source.resolve("book/catalogue.json")).contains("source-commit"));
    }
}
