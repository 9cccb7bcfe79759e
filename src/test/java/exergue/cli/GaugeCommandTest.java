package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Golden;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is printed of photographs, on those of the demonstration catalogue. */
class GaugeCommandTest {

    private static final Path GOLDEN = Path.of("src/test/resources/golden/cli/gauge");
    private static final String PICTURES = "catalogue-src/photographs/";

    @Test
    void bothSidesOfACoinAgainstItsEntry() {
        Ran ran = Ran.command("gauge", PICTURES + "ark-022-obv.jpg", PICTURES + "ark-022-rev.jpg");
        assertEquals(0, ran.code(), ran.all());
        Golden.check(GOLDEN.resolve("two-sides.txt"), ran.out());
    }

    @Test
    void oneSideWithoutAnEntry(@TempDir Path folder) throws Exception {
        Path alone = Files.copy(Path.of(PICTURES + "ark-022-obv.jpg"), folder.resolve("coin.jpg"));
        Ran ran = Ran.command("gauge", alone.toString(), "--ppi", "600");
        assertEquals(0, ran.code(), ran.all());
        Golden.check(GOLDEN.resolve("alone.txt"), ran.out().replace(alone.toString(), "coin.jpg"));
    }

    /** Drawn by the tests (GradedCoin 34): the greatest diameter is 22.87 mm, the axis 288.5°. */
    @Test
    void theExampleOfTheDocsIsWhatIsPrinted() throws Exception {
        Ran ran = Ran.command("gauge", "docs/pictures/both-sides.jpg");
        assertEquals(0, ran.code(), ran.all());
        assertTrue(Files.readString(Path.of("docs/photographs.md")).contains("```text\n" + ran.out() + "```"), ran.out());
    }

    @Test
    void whatCannotBeMeasuredIsSaidWithOne() {
        Ran ran = Ran.command("gauge", "src/test/resources/photo/plain.jpg", "src/test/resources/photo/bomb.png");
        assertEquals(1, ran.code());
        Golden.check(GOLDEN.resolve("refused.txt"), ran.out());
    }

    @Test
    void drawingIsAPictureAndAlwaysTheSame(@TempDir Path folder) throws Exception {
        Path drawing = folder.resolve("drawn.png");
        assertEquals(0, Ran.command("gauge", PICTURES + "ark-022-obv.jpg", "--annotated", drawing.toString()).code());
        byte[] first = Files.readAllBytes(drawing);
        assertEquals(0, Ran.command("gauge", PICTURES + "ark-022-obv.jpg", "--annotated", drawing.toString()).code());
        assertArrayEquals(first, Files.readAllBytes(drawing));
        assertEquals("PNG", new String(first, 1, 3, java.nio.charset.StandardCharsets.US_ASCII));
    }

    @Test
    void whatIsKeptGivesTheSameWordsAndTheSameDrawing(@TempDir Path folder) throws Exception {
        String[] command = {"gauge", PICTURES + "ark-022-obv.jpg", PICTURES + "ark-022-rev.jpg", "--cache", folder.resolve("kept").toString(),
            "--annotated", folder.resolve("drawn.png").toString()};
        Ran first = Ran.command(command);
        byte[] drawn = Files.readAllBytes(folder.resolve("drawn.png"));
        assertTrue(Files.isDirectory(folder.resolve("kept")));
        assertEquals(first, Ran.command(command));
        assertArrayEquals(drawn, Files.readAllBytes(folder.resolve("drawn.png")));
    }

    @Test
    void wrongUseIsTwo(@TempDir Path folder) {
        assertWrong("There is no file", "gauge", folder.resolve("none.jpg").toString());
        assertWrong("let its name end in .png", "gauge", PICTURES + "ark-022-obv.jpg", "--annotated", "a.jpg");
        assertWrong("is no number of pixels", "gauge", PICTURES + "ark-022-obv.jpg", "--ppi=0");
        assertWrong("Did you mean “ark-022”?", "gauge", PICTURES + "ark-022-obv.jpg", "--entry=ark-0222");
    }

    private static void assertWrong(String words, String... command) {
        Ran ran = Ran.command(command);
        assertEquals(2, ran.code(), ran.all());
        assertTrue(ran.err().contains(words), ran.err());
    }
}
