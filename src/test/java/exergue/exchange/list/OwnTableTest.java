package exergue.exchange.list;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Exergue;
import exergue.Progress;
import exergue.edition.DataRow;
import exergue.edition.DataRows;
import exergue.edition.PageMap;
import exergue.exchange.CatalogueCsv;
import exergue.files.FolderTree;
import exergue.files.MemoryTree;
import exergue.files.SelectedTree;
import exergue.files.Tree;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.source.SourceReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** What a book carries as catalogue.csv, entered again with the file that the page on lists shows, has the same readings. */
class OwnTableTest {

    private static String plan() throws IOException {
        return EnteringTest.block(Files.readString(Path.of("docs/lists.md")), "lists/catalogue.yaml");
    }

    private static String csv(Tree tree) throws IOException {
        Exergue.Checked checked = Exergue.check(tree, Progress.SILENT);
        Catalogue catalogue = checked.catalogue().orElseThrow();
        List<DataRow> rows = DataRows.of(catalogue, checked.book().orElseThrow(), PageMap.UNKNOWN);
        return CatalogueCsv.of(rows);
    }

    /** Every reading that is printed, as "id kind by recorded". */
    private static List<String> readings(Tree tree, List<String> printed) throws IOException {
        List<String> all = new ArrayList<>();
        for (Coin coin : SourceReader.read(tree).catalogue().orElseThrow().coins()) {
            List.of(coin.measured().stream(), coin.alsoMeasured().stream()).forEach(some -> some.forEach(one -> one.readings().forEach((kind, reading) -> {
                String line = coin.id() + " " + kind.word() + " " + one.by() + " " + reading.value().recorded();
                if (printed.isEmpty() || printed.contains(line)) {
                    all.add(line);
                }
            })));
        }
        return all.stream().sorted().toList();
    }

    /** @return the readings that came back */
    private static List<String> comesBack(Tree tree) throws IOException {
        Tree without = new SelectedTree(tree, path -> !path.startsWith("coins/"));
        Entered entered = Lists.enter(csv(tree).getBytes(StandardCharsets.UTF_8), plan(), without, false);
        assertEquals(List.of(), entered.findings().all().stream().filter(one -> one.severity() == Severity.ERROR).toList());
        List<String> back = readings(Lists.after(without, entered), List.of());
        assertEquals(back, readings(tree, back), "all that came back stood there, hand by hand and letter by letter");
        return back;
    }

    @Test
    void theDemonstrationComesBack() throws IOException {
        Tree demo = new FolderTree(Path.of("catalogue-src"));
        int coins = SourceReader.read(demo).catalogue().orElseThrow().coins().size();
        assertTrue(comesBack(demo).size() > 2 * coins, "most of weight, diameter and axis of " + coins + " coins");
    }

    @Provide
    Arbitrary<List<String>> measured() {
        Arbitrary<String> weight = Arbitraries.of("3.87 g", "59.7 grains", "c. 3.9 g", "'missing: in a frame'", "'> 3.8 g'", "3 dwt", "3.870 g");
        Arbitrary<String> diameter = Arbitraries.of("18 mm", "18 x 17 mm", "17-18.5 mm", "11/16 in", "'illegible: the ink, \"black\", has run'");
        Arbitrary<String> axis = Arbitraries.of("6 h", "180°", "↓", "6:30 h", "'not applicable: uniface'");
        Arbitrary<String> by = Arbitraries.of("bench", "museum", "old-list");
        return Combinators.combine(by, weight, diameter, axis).as((b, w, d, a) -> "measured: {by: " + b + ", weight: " + w + ", diameter: " + d
                + ", axis: " + a + "}\n").list().ofMinSize(1).ofMaxSize(8);
    }

    @Property(tries = 25)
    void everyCatalogueComesBack(@ForAll("measured") List<String> measured) throws IOException {
        Map<String, String> files = new TreeMap<>(Lists.catalogue());
        files.keySet().removeIf(path -> path.startsWith("coins/"));
        for (int i = 0; i < measured.size(); i++) {
            files.put("coins/c-" + i + ".yaml", "id: c-" + i + "\ntype: wheel-drachm\n" + measured.get(i));
        }
        Tree tree = MemoryTree.ofText(files);
        assertEquals(readings(tree, List.of()), comesBack(tree));
        Entered again = Lists.enter(csv(tree).getBytes(StandardCharsets.UTF_8), plan(), tree, true);
        assertEquals(Map.of(), again.files());
        assertEquals("", Lists.shown(again.findings().all().stream().filter(one -> one.code().id().startsWith("list-differs")).toList()));
    }
}
