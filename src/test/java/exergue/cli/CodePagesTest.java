package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.AllCodes;
import exergue.Golden;
import exergue.finding.Code;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every code is unique, says enough, and has its page in the docs. */
class CodePagesTest {

    private static final Path DOCS = Path.of("docs/findings");

    static List<Code> codes() {
        return AllCodes.all();
    }

    @Test
    void idsAreUnique() {
        List<String> ids = codes().stream().map(Code::id).toList();
        assertEquals(ids.stream().distinct().toList(), ids);
        assertTrue(ids.size() > 60, ids.size() + " codes");
    }

    @ParameterizedTest
    @MethodSource("codes")
    void everyCodeHasTitleReasonAndBothSamples(Code code) {
        assertTrue(code.title().length() > 10 && !code.title().endsWith("."), code.title());
        assertTrue(code.why().length() > 20 && code.why().endsWith("."), code.why());
        assertTrue(!code.faulty().isBlank() && !code.mended().isBlank() && !code.faulty().equals(code.mended()), code.id());
    }

    @ParameterizedTest
    @MethodSource("codes")
    void thePageInTheDocsIsTheOneThatExplainShows(Code code) {
        Golden.check(DOCS.resolve(code.id() + ".md"), CodePage.of(code));
        String shown = Ran.command("explain", code.id()).out();
        assertEquals(words(CodePage.of(code)), words(shown));
        assertFalse(shown.startsWith("#") || shown.contains("\n**") || shown.contains("```"), shown);
    }

    /** The text without the marks of Markdown and without its lines. */
    private static String words(String page) {
        return page.replaceAll("\\A# |(?m:^```$)|\\*\\*", "").replaceAll("\\s+", " ").strip();
    }

    @Test
    void theIndexListsThemAll() {
        Golden.check(DOCS.resolve("README.md"), CodePage.index(codes()));
    }

    @Test
    void noPageIsLeftOverFromACodeThatIsGone() throws IOException {
        List<String> wanted = Stream.concat(Stream.of("README.md"), codes().stream().map(c -> c.id() + ".md")).sorted().toList();
        try (Stream<Path> pages = Files.list(DOCS)) {
            assertEquals(wanted, pages.map(page -> page.getFileName().toString()).sorted().toList());
        }
    }
}
