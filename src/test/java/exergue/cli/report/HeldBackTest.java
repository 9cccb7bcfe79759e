package exergue.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Exergue;
import exergue.Progress;
import exergue.Repair;
import exergue.files.MemoryTree;
import exergue.finding.Findings;
import exergue.source.heldback.HeldBack;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No exact find-spot in anything that check prints, however broken its file. */
class HeldBackTest {

    private static final String SECRET = "behind the third dune 48.1375";

    @ParameterizedTest
    @ValueSource(strings = {
        "dune:\n  name: Coast\n  exact: field  @\n",
        "dune:\n  name: Coast\n  exakt: field @\n",
        "dune:\n  name: Coast\n  coordinates: @\n",
        "dune: {name: Coast, exact: field @, kinde: hoard}\n",
        "dune: {name: Coast,\n  exact: field\n  @, kind: hord}\n",
        "dune: {name: Coast,\n  exact: field\n    @, kind: hord}\n",
        "dune: {name: Coast,\n  kind: hord, exact: @}\n",
        "dune:\n  name: Coast\n  exact: |\n    field @\n  kind: hord\n",
        "dune:\n  name: Coast\n  exact: >-\n    N: field @\n\n    E: @\n  kind: hord\n",
        "dune:\n  name: Coast\n  exact: field: @\n",
        "dune:\n  name: Coast\n  exact: \"field @\n  kind: hoard\n",
        "dune:\n  name: Coast\n  exact: [field @]\n",
        "dune:\n  name: Coast\n  exact: {at: field @}\n",
        "dune:\n  name: Coast\n  exact:\n    at: field @\n    - 12\n",
        "dune:\n  name: Coast\n\texact: field @\n",
        "dune:\n  name: Coast\nexact: field @\n",
        "dune: field @\n",
        "'exact: field @':\n  name: Coast\n",
        "dune:\n  exact: \"behind\n@: wood\n",
        "field @\n",
        "- {name: Coast, exact: @}\n",
        "dune:\n  name: Coast\n  kind: hord # field @\n",
        "dune:\n  exact: field @\n  exact: @ too\n",
        "dune:\n  name: Coast\n<<<<<<< HEAD\n  exact: field @\n=======\n  exact: wood @\n>>>>>>> editor\n",
        "dune:\n  name: Coast\n<<<<<<< HEAD\n  exakt: field @\n=======\n  exakt: wood @\n  kind: hoard\n>>>>>>> editor\n",
        "dune:\n  name: Coast\n  exact:\n<<<<<<< HEAD\n    field @: 1\n=======\n    wood @\n>>>>>>> editor\n",
        "dune:\n  name: Coast\n  exact: field a\u0301 @\n"})
    void inNoFormWhateverIsWrongWithTheFile(String spots) throws IOException {
        Map<String, String> files = Map.of("catalogue.yaml", "title: Coins\nlanguage: en\nparts: {body: [catalogue]}\n",
                "find-spots.yaml", spots.replace("@", SECRET));
        MemoryTree tree = MemoryTree.ofText(files);
        Findings findings = Exergue.check(tree, Progress.SILENT).findings();
        assertTrue(findings.all().stream().anyMatch(finding -> finding.place().file().equals("find-spots.yaml")), findings.all()::toString);
        for (Format format : Format.values()) {
            String text = format.render(new Report(findings, tree, "."), Ink.PLAIN);
            assertFalse(text.contains("third dune") || text.contains("48.13"), text);
        }
        List<Repair.Change> changes = Repair.of(tree, of -> Exergue.check(of, Progress.SILENT).findings()).changes();
        String repairs = RepairText.render(changes, new Report(Findings.none(), tree, "."), Ink.PLAIN);
        assertFalse(repairs.contains("third dune"), repairs);
    }

    @Test
    void theRestOfTheFileIsShownAsItIsWritten() {
        List<String> lines = List.of("dune:", "  name: Coast, the dunes", "  kind: hoard", "  closed: -0304", "  exact-may-be-printed: no", "  compared-with:",
                "    title: nine sites, all told", "    periods:", "      - {period: archon, coins: 12}", "    others: 4", "",
                "ridge: {name: The ridge, kind: survey}", "'wood': {\"name\": 'A wood, old', kind: survey,", "  exact-may-be-printed: no}");
        assertEquals(lines, HeldBack.in(lines).shown());
    }

    @Test
    void whatIsHeldBackIsSaidInItsPlace() {
        assertEquals(List.of("dune: {name: Coast, exact: … (not shown)", "ridge:", "  exact: … (not shown)", "    … (not shown)", "  kind: hoard … (not shown)"),
                HeldBack.in(List.of("dune: {name: Coast, exact: a field, kind: hoard}", "ridge:", "  exact: >", "    a field", "  kind: hoard # a field")).shown());
    }

    @Provide
    Arbitrary<String> broken() {
        return Arbitraries.of("dune:", "  ", "exact: ", "name: ", "{", "}", "[", "]", ",", "'", "\"", "\n", "\n  ", "\n    ", "- ", "# ", ": ", "kind: ",
                "<<<<<<< HEAD\n", "=======\n", ">>>>>>> editor\n", "|", "X").list().ofMinSize(1).ofMaxSize(12).map(parts -> String.join("", parts));
    }

    /** Whatever stands before it: a place after the key is not shown. */
    @Property(tries = 500)
    void nothingAfterTheKeyOnItsLineIsShown(@ForAll("broken") String before, @ForAll("broken") String after) {
        String text = before.replace("X", "y") + "exact: SECRET" + after.replace("X", "y");
        assertFalse(HeldBack.in(List.of(text.split("\n", -1))).shown().stream().anyMatch(line -> line.contains("SECRET")), text);
    }
}
