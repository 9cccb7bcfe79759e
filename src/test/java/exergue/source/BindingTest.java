package exergue.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.MemoryTree;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.PrintForm;
import exergue.model.BookWord;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.HouseStyle;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What entries become. */
class BindingTest {

    private static Catalogue read(Map<String, String> files) {
        Loaded loaded = Trees.read(MemoryTree.ofText(files));
        assertEquals("", Trees.shown(loaded.findings()));
        return loaded.catalogue().orElseThrow();
    }

    @Test
    void textStaysWhatWasWritten() {
        Map<String, String> files = Trees.sound();
        files.put("coins/lk-1.yaml", "id: lk-1\ntype: owl\ncollection: {id: museum, number: 0042}\n"
                + "provenance: [1931, no, 2024-01-05, 1.50, on]\n");
        Coin coin = read(files).coins().get(0);
        assertEquals("0042", coin.holding().orElseThrow().number().orElseThrow().value());
        assertEquals(List.of("1931", "no", "2024-01-05", "1.50", "on"), coin.provenance().stream().map(step -> step.words().value()).toList());
    }

    @Test
    void aDieMayComeWithItsState() {
        Map<String, String> files = Trees.sound();
        files.put("coins/lk-1.yaml", "id: lk-1\ntype: owl\ndies: {obverse: {die: O1, state: 2, flaw: a crack}, reverse: R2}\n");
        Coin.Dies dies = read(files).coins().get(0).dies().orElseThrow();
        assertEquals("O1 R2", dies.obverse().orElseThrow() + " " + dies.reverse().orElseThrow());
        assertEquals("2 a crack", dies.obverseState().orElseThrow().number() + " " + dies.obverseState().orElseThrow().flaw().orElseThrow());
        assertTrue(dies.reverseState().isEmpty());
    }

    @Test
    void coinsComeInNaturalOrder() {
        Map<String, String> files = Trees.sound();
        files.put("coins/lk-10.yaml", "id: lk-10\ntype: owl\n");
        files.put("coins/more/lk-9.yaml", "id: lk-9\ntype: owl\n");
        assertEquals(List.of("lk-1", "lk-9", "lk-10"), read(files).coins().stream().map(c -> c.id().value()).toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"en; .; c.; “”; c.", "fr; ,; env.; «\u00A0\u00A0»; vers", "de; ,; ca.; „“; ca.", "it; ,; ca.; «»; ca."})
    void whatTheHouseLeavesOpenFollowsTheLanguage(String language, String mark, String circa, String quotes, String ofDates) {
        Map<String, String> files = Trees.sound();
        files.put("catalogue.yaml", files.get("catalogue.yaml").replace("language: en", "language: " + language));
        HouseStyle style = read(files).style();
        assertEquals(List.of(mark, circa, quotes, ofDates), List.of(style.form().decimalMark(), style.form().circa(),
                style.quotes().open() + style.quotes().close(), style.dates().circa()));
        files.put("house-style.yaml", "measurement-line: {decimal-mark: point, circa: about}\n"
                + "quotation-marks: {open: '<'}\nwords: {obverse: Av.}\n");
        style = read(files).style();
        assertEquals(List.of(".", "about", "<" + quotes.substring(quotes.length() / 2)), List.of(style.form().decimalMark(),
                style.form().circa(), style.quotes().open() + style.quotes().close()));
        assertEquals(Map.of(BookWord.OBVERSE, "Av."), style.words());
    }

    @Test
    void theHouseStyleHasItsDefaults() {
        HouseStyle style = read(Trees.sound()).style();
        assertEquals(PrintForm.DEFAULT, style.form());
        assertEquals(List.of(Kind.WEIGHT, Kind.DIAMETER, Kind.AXIS), style.order());
        assertEquals(", – [–]" + "°†", style.separator() + style.missing() + style.notApplicable() + " " + style.illegible()
                + style.signs().otherHand() + style.signs().damaged());
        assertEquals(List.of("gold", "silver", "billon", "copper-alloy", "copper", "lead"), List.copyOf(style.metals().keySet()));
    }

    @Test
    void aConventionIsBoundBeforeTheReadingsUnderIt() {
        Map<String, String> files = Trees.sound();
        files.put("conventions.yaml", "bench:\n  title: bench\n  decimal-mark: comma\n"
                + "  weight: {unit: g, gr: grains, resolution: '0,1 grain'}\n  diameter: {direction: side to side}\n"
                + "  axis: {notation: degrees, turning: anticlockwise, resolution: '0,5 h'}\n");
        files.put("coins/lk-1.yaml", "id: lk-1\ntype: owl\nmeasured: {by: bench, weight: '3,87'}\n");
        Catalogue catalogue = read(files);
        Convention bench = catalogue.conventions().get("bench").value();
        // a grain is 64.79891 mg: international yard and pound agreement, 1959
        assertEquals(0, new BigDecimal("0.006479891").compareTo(bench.weighing().resolution().orElseThrow()));
        assertEquals(0, new BigDecimal("0.5").compareTo(bench.turning().resolution().orElseThrow()));
        assertEquals(Convention.Direction.SIDE_TO_SIDE, bench.sizing().direction());
        assertTrue(bench.turning().anticlockwise() && bench.decimalComma());
        assertEquals("3,87", catalogue.coins().get(0).measured().orElseThrow().reading(Kind.WEIGHT).orElseThrow().value().recorded());
    }

    @Test
    void tenFaultsInTenFilesGiveTenFindings() {
        Map<String, String> files = Trees.sound();
        for (int i = 10; i < 20; i++) {
            files.put("coins/lk-" + i + ".yaml", "id: lk-" + i + "\ntype: owl\ndamage: [chiped]\n");
        }
        assertEquals(10, Trees.read(MemoryTree.ofText(files)).findings().all().size());
    }

    @Test
    void anUnreadableTypeIsStillThereForTheCoinsThatPointToIt() {
        Loaded loaded = Trees.read(Trees.with("types/owl.yaml", "id: \"owl\n"));
        assertEquals("owl", loaded.catalogue().orElseThrow().types().get(0).id().value());
        assertEquals(1, loaded.findings().all().size());
    }

    @Test
    void withoutAUsableCatalogueFileThereIsNoCatalogueButEveryFinding() {
        Map<String, String> files = Trees.sound();
        files.put("catalogue.yaml", "title: [");
        files.put("coins/lk-1.yaml", "id: lk-1\n");
        Loaded loaded = Trees.read(MemoryTree.ofText(files));
        assertTrue(loaded.catalogue().isEmpty());
        assertEquals(2, loaded.findings().all().size(), Trees.shown(loaded.findings()));
    }

    @Test
    void anEmptyFolderIsOneFinding() {
        assertEquals("error no-catalogue-file at catalogue.yaml\n"
                + "  The folder is empty; a catalogue begins with the file catalogue.yaml.\n"
                + "  Name the folder that holds it, or lay out a small catalogue with: start DIR.\n",
                Trees.shown(Trees.read(MemoryTree.ofText(Map.of())).findings()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "{a: ", "- ", "? ", "> ", "*a ", "<a ", "'a ", "`a", "[a](", "![", "&a [*a, "})
    void textMadeToKeepTheReaderBusyDoesNot(String bomb) {
        String text = bomb.repeat(40_000 / bomb.length()) + "\n";
        Map<String, String> files = Trees.sound();
        files.put("coins/lk-1.yaml", "id: lk-1\ntype: owl\nnote: |\n  " + text);
        files.put("types/owl.yaml", "id:\n  " + text);
        files.put("chapters/history.md", text);
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> Trees.read(MemoryTree.ofText(files)));
    }

    @Property
    void noBytesBreakTheReader(@ForAll @Size(max = 60) byte[] bytes, @ForAll boolean entry) {
        Trees.read(Trees.with(entry ? "coins/lk-1.yaml" : "chapters/history.md", bytes));
    }

    @Property
    void noTextBreaksTheReader(@ForAll("yamlish") String text) {
        Map<String, String> files = new TreeMap<>(Trees.sound());
        for (String path : List.of("coins/lk-1.yaml", "catalogue.yaml", "house-style.yaml", "conventions.yaml", "chapters/history.md")) {
            files.put(path, text);
        }
        Trees.read(MemoryTree.ofText(files));
    }

    @net.jqwik.api.Provide
    net.jqwik.api.Arbitrary<String> yamlish() {
        return net.jqwik.api.Arbitraries.of("id: ", "lk-1", "\n", "  ", "- ", "[", "]", "{", "}", ": ", ", ", "\"", "'", "|\n", ">", "&a ",
                "*a", "!t ", "#", "?", "%", "@", "---\n", "...\n", "\t", "\\", "measured", "weight", "é", "\uD800\uDD98", "<b>", "<<: ",
                "[coin:x]", "![", "](", ")", "**", "`", "~").list().ofMaxSize(14).map(parts -> String.join("", parts));
    }
}
