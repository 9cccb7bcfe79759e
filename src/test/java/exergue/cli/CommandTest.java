package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import exergue.Exergue;
import exergue.Golden;
import exergue.Stage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the commands say, and on which stream. */
class CommandTest {

    private static final Path HELP = Path.of("src/test/resources/golden/cli/help");

    @TempDir
    private Path folder;

    static Stream<String> commands() {
        return Stream.of("", "typeset", "check", "reading", "agreement", "gauge", "metrology", "dies", "match", "start", "enter", "numbers", "collate",
                "proof", "explain");
    }

    @ParameterizedTest
    @MethodSource("commands")
    void helpIsAsApproved(String command) {
        Ran ran = command.isEmpty() ? Ran.command("--help") : Ran.command(command, "--help");
        assertEquals(0, ran.code(), ran.all());
        Golden.check(HELP.resolve((command.isEmpty() ? "exergue" : command) + ".txt"), ran.out());
    }

    @Test
    void theVersionIsThatOfTheBuild() throws IOException {
        String pom = Files.readString(Path.of("pom.xml"));
        assertTrue(pom.contains("<artifactId>exergue</artifactId>\n  <version>" + Exergue.VERSION), "pom.xml has another");
        assertEquals("exergue " + Exergue.VERSION + "\n", Ran.command("--version").out());
    }

    private Path brokenSource() throws IOException {
        Path source = folder.resolve("source");
        Ran.command("start", source.toString());
        Files.writeString(source.resolve("coins/ov-4.yaml"), "id: ov-4\ntype: wheel-obl\nwieght: 3 g\n");
        Files.writeString(source.resolve("works.yaml"), "pender: {sign: Pender, titel: A List}\n");
        return source;
    }

    @ParameterizedTest
    @CsvSource({"check, json", "check, sarif", "typeset, json", "typeset, sarif"})
    void whatMachinesReadHasTheOutputToItself(String command, String format) throws IOException {
        Path source = brokenSource();
        Ran ran = Ran.command(command, source.toString(), "--format", format);
        JsonNode report = new ObjectMapper().readTree(ran.out());
        assertAll(() -> assertEquals(1, ran.code()),
                () -> assertTrue(report.has("findings") || report.has("runs")),
                () -> assertTrue(ran.err().contains("errors"), "the last line is on the other stream: " + ran.err()));
    }

    @Test
    void faultsInSeveralFilesComeInOneRunSortedByPlace() throws IOException {
        Ran ran = Ran.command("check", brokenSource().toString(), "--format", "json");
        List<String> files = new ObjectMapper().readTree(ran.out()).findValuesAsText("file");
        assertTrue(files.containsAll(List.of("coins/ov-4.yaml", "works.yaml")), files.toString());
        assertEquals(files.stream().sorted().toList(), files);
    }

    @Test
    void aPlaceInTheReportCanBeOpenedFromWhereTheCommandWasStarted() throws IOException {
        Path source = brokenSource();
        Ran ran = Ran.command("check", source.toString(), "--format", "concise");
        String first = ran.out().lines().findFirst().orElseThrow();
        assertTrue(Files.exists(Path.of(first.substring(0, first.indexOf(".yaml:") + 5))), first);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "weight 3.87 g | printed         3.87\u202Fg",
        "weight 59.7 grains | factor          1 grain = 0.06479891 g",
        "weight 59.7 grains | exact           3.868494927 g",
        "axis -30° | printed         11\u202Fh",
        "diameter 11/16 in | printed         17\u202Fmm",
        "weight missing: lost in 1912 | lost in 1912",
    })
    void aReadingShowsItsWorking(String words, String shown) {
        Ran ran = Ran.command(("reading " + words).split(" "));
        assertEquals(0, ran.code(), ran.all());
        assertTrue(ran.out().contains(shown), ran.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"weight 59.7 gr", "weight three", "axis 25 h", "diameter 18 oxen"})
    void aReadingThatCannotBeReadIsAnErrorWithACaret(String words) {
        Ran ran = Ran.command(("reading " + words).split(" "));
        assertEquals(1, ran.code(), ran.all());
        assertTrue(ran.out().contains("error: ") && ran.out().contains("^"), ran.out());
    }

    @Test
    void theConventionOfASourceSaysWhatALetterMeans() throws IOException {
        Path source = folder.resolve("source");
        Ran.command("start", source.toString());
        Ran ran = Ran.command("reading", "weight", "59.7 gr", "--by", "old-list", "--source", source.toString());
        assertEquals(0, ran.code(), ran.all());
        assertTrue(ran.out().contains("the old list of the cabinet"), ran.out());
        Ran slip = Ran.command("reading", "weight", "59.7 gr", "--by", "old-lst", "--source", source.toString());
        assertEquals(2, slip.code());
        assertTrue(slip.err().contains("Did you mean “old-list”?"), slip.err());
    }

    @Test
    void theTableOfUnitsIsAsApproved() {
        Golden.check(Path.of("src/test/resources/golden/cli/units.txt"), Ran.command("reading", "--units").out());
    }

    @Test
    void progressIsSilentUntilItIsTimeToSpeak() {
        StringWriter err = new StringWriter();
        StageLines lines = new StageLines(new PrintWriter(err), false);
        lines.starts(Stage.READ);
        lines.starts(Stage.CHECK);
        assertEquals("", err.toString());
        lines.speak();
        lines.starts(Stage.TYPESET);
        assertEquals("exergue: checking the entries …\nexergue: setting the pages …\n",
                err.toString().replace("\r\n", "\n"));
        lines.close();
    }
}
