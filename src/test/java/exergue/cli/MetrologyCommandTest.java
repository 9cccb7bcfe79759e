package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MetrologyCommandTest {

    private static final String DEMO = "catalogue-src";
    private static final String GROUPS = "royal-tetradrachms,tetradrachms-by-king";
    private static final Path APPROVED = Path.of("src/test/resources/golden/cli/metrology");

    @Test
    void theTablesOfTheDemoAreAsApproved() {
        Ran ran = Ran.command("metrology", DEMO, "--group", GROUPS);
        assertEquals(0, ran.code(), ran.err());
        Golden.check(APPROVED.resolve("groups.txt"), ran.out());
    }

    @Test
    void everyCoinIsDividedByFields() {
        Ran ran = Ran.command("metrology", DEMO, "--group", "mint,denomination", "--show", "weights");
        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().contains("Phormantis, Drachm"), ran.out());
    }

    @Test
    void everyFormIsAsApproved() {
        Ran ran = Ran.command("metrology", DEMO, "--group", "tetradrachms-by-king", "--show", "weights:comparison", "--show",
                "weights:outliers", "--show", "weights:standard", "--show", "weights:frequencies", "--show", "axes:hours", "--show",
                "axes:comparison");
        assertEquals(0, ran.code(), ran.err());
        Golden.check(APPROVED.resolve("forms.txt"), ran.out());
    }

    @Test
    void tablesAndChartsBecomeFiles(@TempDir Path folder) throws IOException {
        assertEquals(0, Ran.command("metrology", DEMO, "--group", GROUPS, "--as", "csv", "--to", folder.toString()).code());
        assertEquals(0, Ran.command("metrology", DEMO, "--group", GROUPS, "--as", "svg", "--to", folder.toString()).code());
        try (Stream<Path> files = Files.list(folder)) {
            List<String> names = files.map(file -> file.getFileName().toString()).sorted().toList();
            assertTrue(names.containsAll(List.of("axes-hours.csv", "axes-rose.svg", "diameters-scatter.svg", "weights-histogram.svg",
                    "weights-table.csv")), names::toString);
        }
        String chart = Files.readString(folder.resolve("weights-histogram.svg"));
        assertTrue(chart.startsWith("<svg ") && chart.contains("<title>Histogram of weights"), chart);
        assertTrue(Files.readString(folder.resolve("weights-table.csv")).startsWith("Group,n,left out,mean,"));
    }

    @Test
    void wrongWordsAreToldOf(@TempDir Path folder) {
        assertTrue(Ran.command("metrology", DEMO, "--group", "royal-tetradrachm").err().contains("Did you mean “royal-tetradrachms”?"));
        assertTrue(Ran.command("metrology", DEMO, "--show", "weight").err().contains("Did you mean “weights”?"));
        assertTrue(Ran.command("metrology", DEMO, "--show", "weights:histograms").err().contains("Did you mean “histogram”?"));
        assertEquals(2, Ran.command("metrology", DEMO, "--as", "csv").code());
        assertEquals(1, Ran.command("metrology", "src/test/resources/broken/unknown-type").code());
    }
}
