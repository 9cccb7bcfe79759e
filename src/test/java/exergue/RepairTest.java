package exergue;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.files.MemoryTree;
import exergue.files.OverlaidTree;
import exergue.files.Tree;
import exergue.finding.Severity;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A repair changes what it names and nothing else, and there is nothing left for a second one. */
class RepairTest {

    private static final String COIN = "id: lk-1\ntype: owl\n";

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "'note: Two cracks - the die was near its end.' | 'note: Two cracks – the die was near its end.' | hyphen-for-dash",
        "'note: Struck  over , twice  .  # really' | 'note: Struck over, twice.  # really' | stray-space",
        "'note: A planchet, and Planchet.' | 'note: A flan, and Flan.' | other-word-wanted",
        "'damage: [Chipped, corrded]  # seen' | 'damage: [chipped, corroded]  # seen' | unknown-word",
        "'damage: [''chiped'']' | 'damage: [''chipped'']' | unknown-word",
        "'provenence: [An old cabinet]' | 'provenance: [An old cabinet]' | unknown-key",
        "'reverse: {legend: BAΣIΛEΩΣ TΗΛΑΝOΡΟΣ}  # typed' | 'reverse: {legend: ΒΑΣΙΛΕΩΣ ΤΗΛΑΝΟΡΟΣ}  # typed' | mixed-alphabets",
        "'obverse: {legend: ΙVLIA AVG}' | 'obverse: {legend: IVLIA AVG}' | mixed-alphabets",
        "'countermark: Lykia\u0301n' | 'countermark: Lykián' | not-composed",
        "'note: Lykia\u0301n planchet - thin' | 'note: Lykián flan – thin' | 'hyphen-for-dash, not-composed, other-word-wanted'"})
    void whatCanBeMendedWithoutHarm(String before, String after, String codes) throws IOException {
        Repair.Repaired repaired = repair(tree(COIN + before.replace("\\u0301", "\u0301") + "\n"));
        assertEquals(COIN + after + "\n", text(repaired));
        assertEquals(List.of("coins/lk-1.yaml:3 " + codes), repaired.changes().stream()
                .map(change -> change.file() + ":" + change.line() + " " + String.join(", ", change.codes())).toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"note: a blank flan", "note: its flan blank", "damage: [worn]", "damage: [bent]", "note: a blanket over it", "note: 12-14 and well-known", "nots: x",
        "obverse: {legend: ΑΒ  ΓΔ}",
        "obverse: {legend: AΡΚΗ}", "obverse: {legend: ΛAΚ}", "note: \"Struck \\x20over\"", "note: 'see . . . there'"})
    void whatMayBeMeantOtherwiseIsLeftAlone(String line) throws IOException {
        assertEquals(List.of(), repair(tree(COIN + line.replace("\\\\", "\\") + "\n")).changes());
    }

    @Test
    void lineEndsTheByteOrderMarkAndTheLastLineStay() throws IOException {
        Repair.Repaired repaired = repair(tree("\uFEFF# a coin\r\n" + COIN.replace("\n", "\r\n") + "\r\nnote: cracks - many"));
        assertEquals("\uFEFF# a coin\r\n" + COIN.replace("\n", "\r\n") + "\r\nnote: cracks – many", text(repaired));
    }

    @Test
    void whatIsExcusedOrTurnedOffIsNotMended() throws IOException {
        assertEquals(List.of(), repair(tree(COIN + "note: cracks - many\nexcused:\n  - {finding: hyphen-for-dash, because: it is cut so}\n")).changes());
        Map<String, String> files = files(COIN + "note: cracks - many\n");
        files.merge("house-style.yaml", "findings: {hyphen-for-dash: off}\n", String::concat);
        assertEquals(List.of(), repair(MemoryTree.ofText(files)).changes());
    }

    @Provide
    Arbitrary<String> entries() {
        Arbitrary<String> pieces = Arbitraries.of("flan", "planchet", " - ", "  ", " ,", " .", "a", "é", "e\u0301", "–", "#", " # ", "'", "\"", ": ", "{",
                "coin", "*thin*", "[coin:lk-1]", "𐆖", "\\", "12-14", "...");
        Arbitrary<String> words = pieces.list().ofMaxSize(8).map(list -> String.join("", list).replace("\n", " "));
        Arbitrary<String> line = words.flatMap(text -> Arbitraries.of("note: " + text, "note: \"" + text.replaceAll("[\"\\\\]", "") + "\"",
                "note: '" + text.replace("'", "''") + "'", "note: |\n  " + text + "\n  " + text, "# " + text, "damage: [chiped, corroded]",
                "countermark: " + text, "provenance:\n  - " + text + "\n  - {words: '" + text.replace("'", "''") + "'}", "shape: x"));
        return line.list().ofMinSize(1).ofMaxSize(4).flatMap(lines -> Arbitraries.of("\n", "\r\n")
                .map(end -> (COIN + String.join("\n", lines) + "\n").replace("\n", end)));
    }

    @Property(tries = 150)
    void aSecondRepairFindsNothingAndOnlyTheLinesThatAreNamedChange(@ForAll("entries") String entry) throws IOException {
        Tree tree = tree(entry);
        Repair.Repaired once = repair(tree);
        assertEquals(List.of(), repair(new OverlaidTree(tree, new MemoryTree(once.files()))).changes());
        String[] before = entry.split("\n", -1);
        String[] after = text(once, entry).split("\n", -1);
        assertEquals(before.length, after.length);
        List<Integer> named = once.changes().stream().map(Repair.Change::line).toList();
        for (int i = 0; i < before.length; i++) {
            assertEquals(!before[i].equals(after[i]), named.contains(i + 1), before[i] + " / " + after[i]);
        }
    }

    @Property(tries = 100)
    void noRepairMakesAFileWorse(@ForAll("entries") String entry) throws IOException {
        Tree tree = tree(entry);
        Tree mended = new OverlaidTree(tree, new MemoryTree(repair(tree).files()));
        List<String> now = errors(mended);
        List<String> old = errors(tree);
        assertEquals(List.of(), now.stream().filter(code -> !old.contains(code)).toList());
    }

    private static List<String> errors(Tree tree) throws IOException {
        return Exergue.check(tree, Progress.SILENT).findings().all().stream()
                .filter(finding -> finding.severity() == Severity.ERROR).map(finding -> finding.code().id()).toList();
    }

    @Test
    void filesWithoutAFaultAreNotWritten() throws IOException {
        Repair.Repaired repaired = repair(tree(COIN + "note: planchet\n"));
        assertEquals(List.of("coins/lk-1.yaml"), List.copyOf(repaired.files().keySet()));
        assertArrayEquals(new Object[0], repair(tree(COIN)).files().keySet().toArray());
    }

    private static String text(Repair.Repaired repaired) {
        return new String(repaired.files().get("coins/lk-1.yaml"), StandardCharsets.UTF_8);
    }

    private static String text(Repair.Repaired repaired, String otherwise) {
        return repaired.files().isEmpty() ? otherwise : text(repaired);
    }

    private static Repair.Repaired repair(Tree tree) throws IOException {
        return Repair.of(tree, now -> Exergue.check(now, Progress.SILENT).findings());
    }

    private static Tree tree(String coin) {
        return MemoryTree.ofText(files(coin));
    }

    private static Map<String, String> files(String coin) {
        Map<String, String> files = new TreeMap<>();
        files.put("catalogue.yaml", "title: Coins of the Coast\nlanguage: en\nparts: {body: [catalogue]}\n");
        files.put("mints.yaml", "lakonthos: {name: Lakonthos}\n");
        files.put("house-style.yaml", "wording:\n  - {write: flan, not: [planchet, blank]}\n");
        files.put("types/owl.yaml", "id: owl\nmint: lakonthos\ndenomination: drachm\nmetal: silver\n");
        files.put("coins/lk-1.yaml", coin);
        return files;
    }
}
