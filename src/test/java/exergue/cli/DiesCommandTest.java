package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DiesCommandTest {

    private static final String DEMO = "catalogue-src";

    @Test
    void printsEveryTable() {
        Ran ran = Ran.command("dies", DEMO, "--group", "silver-of-arkeneia");
        assertEquals(0, ran.code(), ran.err());
        for (String form : List.of("table", "frequencies", "estimates", "links", "pairs", "chains", "states")) {
            assertTrue(ran.out().contains("dies, " + form + "\n"), form);
        }
        assertTrue(ran.out().lines().anyMatch(line -> line.matches("O18 +1 +– +R31, R33 +ark-048, ark-049")), ran.out());
    }

    @Test
    void countsGroupsApart() {
        Ran ran = Ran.command("dies", DEMO, "--group", "mint", "--show", "table");
        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().contains("Arkeneia") && ran.out().contains("Phormantis"), ran.out());
    }

    @Test
    void writesTablesAndTheDiagram(@TempDir Path folder) throws Exception {
        assertEquals(0, Ran.command("dies", DEMO, "--as", "csv", "--to", folder.toString()).code());
        assertEquals(0, Ran.command("dies", DEMO, "--as", "svg", "--to", folder.toString()).code());
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of("dies-chains.csv", "dies-diagram.csv", "dies-diagram.svg", "dies-estimates.csv", "dies-frequencies.csv",
                    "dies-links.csv", "dies-pairs.csv", "dies-states.csv", "dies-table.csv"),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
        assertTrue(Files.readString(folder.resolve("dies-diagram.svg")).contains("O18"));
    }

    @Test
    void namesTheFormThatWasMeant() {
        Ran ran = Ran.command("dies", DEMO, "--show", "chain");
        assertEquals(2, ran.code());
        assertTrue(ran.err().contains("Did you mean “chains”?"), ran.err());
    }
}
