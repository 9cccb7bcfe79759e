package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.api.Test;

/** A catalogue can come from anyone: what is hostile in it is found, named and not done. */
class TrustTest {

    @TempDir
    private Path folder;
    private Path source;

    @BeforeEach
    void layOut() {
        source = folder.resolve("source");
        assertEquals(0, Ran.command("start", source.toString()).code());
    }

    private Ran typeset() {
        return Ran.command("typeset", source.toString(), "--to", folder.resolve("book").toString());
    }

    private void append(String file, String text) throws IOException {
        Path path = source.resolve(file);
        Files.writeString(path, (Files.exists(path) ? Files.readString(path) : "") + text);
    }

    private void assertStopped(Ran ran, String file) {
        assertEquals(1, ran.code(), ran.all());
        assertTrue(ran.out().contains(file), ran.out());
        assertFalse(ran.all().contains("\tat "), ran.all());
        assertFalse(ran.all().contains("Exception"), ran.all());
        assertFalse(Files.exists(folder.resolve("book/catalogue.pdf")));
    }

    @Test
    void aBombOfAliasesDoesNotGoOff() throws IOException {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int level = 1; level < 12; level++) {
            bomb.append("a%d: &a%d [".formatted(level, level))
                    .append(("*a" + (level - 1) + ", ").repeat(8)).append("*a" + (level - 1) + "]\n");
        }
        append("coins/bomb.yaml", bomb.toString());
        assertStopped(typeset(), "coins/bomb.yaml");
    }

    @Test
    void yamlMakesNoObjects() throws IOException {
        append("coins/ov-8.yaml", "damage: !!javax.script.ScriptEngineManager [chipped]\n");
        assertStopped(typeset(), "coins/ov-8.yaml");
    }

    @ParameterizedTest
    @CsvSource({"../secret.jpg", "/etc/passwd", "photographs/../../secret.jpg", "http://localhost:9/a.jpg",
        "file:///etc/passwd", "C:\\secret.jpg"})
    void aPhotographOutsideTheTreeIsNotOpened(String path) throws IOException {
        Files.writeString(folder.resolve("secret.jpg"), "secret");
        append("coins/ov-8.yaml", "photograph: {obverse: '" + path + "'}\n");
        assertStopped(typeset(), "coins/ov-8.yaml");
    }

    @ParameterizedTest
    @CsvSource({"![x](http://localhost:9/a.png)", "![x](../secret.jpg)", "<script>alert(1)</script>",
        "Text <img src=\"file:///etc/passwd\"> text"})
    void aChapterPassesNothingThroughThatLeadsOut(String markdown) throws IOException {
        append("chapters/introduction.md", "\n" + markdown + "\n");
        assertStopped(typeset(), "chapters/introduction.md");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "${\"freemarker.template.utility.Execute\"?new()(\"touch pwned\")}",
        "<#include \"/etc/passwd\">",
        "<#include \"../../../etc/passwd\">",
        "${book.class.forName(\"java.lang.Runtime\")}",
        "<#assign x = .data_model.missing.thing>",
    })
    void anOwnTemplateRunsNoCode(String template) throws IOException {
        append("catalogue.yaml", "templates: templates\n");
        Files.createDirectories(source.resolve("templates"));
        append("templates/book.ftlh", template);
        assertStopped(typeset(), "templates/book.ftlh");
        assertFalse(Files.exists(Path.of("pwned")));
    }

    @Test
    void anEndlessNestOfListsIsRefused() throws IOException {
        append("coins/ov-8.yaml", "note: " + "[".repeat(50_000) + "\n");
        assertStopped(typeset(), "coins/ov-8.yaml");
    }
}
