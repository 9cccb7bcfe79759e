package exergue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.finding.Code;
import exergue.finding.Excused;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Severity;
import exergue.files.FolderTree;
import exergue.files.MemoryTree;
import exergue.files.Tree;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a house makes of kinds of findings, and what entries excuse: nothing is lost without a word. */
class ExcusesTest {

    private static final Path BROKEN = Path.of("src/test/resources/broken");
    private static final Path APPROVED = Path.of("src/test/resources/golden/excuses");
    private static final String FAULT = "reading-not-given";
    private static final String EXCUSE = "excused:\n  - {finding: reading-not-given, because: the dies cannot be told}\n";

    static List<String> codes() {
        return ExcuseCodes.all().stream().map(Code::id).toList();
    }

    @ParameterizedTest
    @MethodSource("codes")
    void itsTreeHasThisFaultAndNoOther(String code) throws IOException {
        Findings findings = check(new FolderTree(BROKEN.resolve(code)));
        Golden.check(APPROVED.resolve(code).resolve("findings.txt"), findings.all().stream().map(ExcusesTest::words)
                .collect(Collectors.joining("\n")));
        assertEquals(List.of(code), codes(findings).stream().distinct().toList());
    }

    private static String words(Finding finding) {
        return finding.severity().word() + " [" + finding.code().id() + "] " + finding.place() + " " + finding.path() + "\n  "
                + finding.what() + "\n  " + finding.remedy() + "\n";
    }

    @Test
    void withoutAWordTheFaultIsAWarning() throws IOException {
        assertEquals(List.of(Severity.WARNING), check(tree("", "")).all().stream().map(Finding::severity).toList());
    }

    @ParameterizedTest
    @CsvSource({"error, ERROR", "warning, WARNING", "note, NOTE"})
    void aHouseWeighsIt(String word, Severity severity) throws IOException {
        Findings findings = check(tree("findings: {" + FAULT + ": " + word + "}\n", ""));
        assertEquals(List.of(FAULT), codes(findings));
        assertEquals(severity, findings.all().get(0).severity());
    }

    @Test
    void aHouseTurnsItOff() throws IOException {
        assertEquals(List.of(), codes(check(tree("findings: {" + FAULT + ": off}\n", ""))));
    }

    @ParameterizedTest
    @CsvSource({"''", "'findings: {reading-not-given: error}\n'", "'findings: {reading-not-given: off}\n'"})
    void whatAnEntryExcusesIsListedWhateverTheHouseSays(String style) throws IOException {
        Findings findings = check(tree(style, EXCUSE));
        assertEquals(List.of(), codes(findings));
        Excused excused = findings.excused().get(0);
        assertEquals(FAULT + ": the dies cannot be told, coins/lk-1.yaml:5", excused.finding().code().id() + ": " + excused.because()
                + ", " + excused.where().file() + ":" + excused.where().line());
    }

    @Test
    void anExcuseHoldsForItsOwnEntry() throws IOException {
        Map<String, String> files = files("", "");
        files.put("coins/lk-2.yaml", files.get("coins/lk-1.yaml").replace("lk-1", "lk-2").replace("3.87", "3.91") + EXCUSE);
        Findings findings = check(MemoryTree.ofText(files));
        assertEquals(List.of("coins/lk-1.yaml"), findings.all().stream().map(finding -> finding.place().file()).toList());
        assertEquals(1, findings.excused().size());
    }

    @Test
    void anExcuseForOneEntryIsNoneForAnotherThatBeginsLikeIt() throws IOException {
        Map<String, String> files = files("findings: {reading-not-given: off}\nexcused: [{in: mints.yaml, entry: pharos, finding: mint-never-used, "
                + "because: its coins follow}]\n", "");
        files.put("mints.yaml", "lakonthos: {name: Lakonthos}\npharos: {name: Pharos}\npharos.new: {name: New Pharos}\n");
        Findings findings = check(MemoryTree.ofText(files));
        assertEquals(List.of("pharos.new"), findings.all().stream().map(Finding::path).toList());
        assertEquals(List.of("pharos"), findings.excused().stream().map(excused -> excused.finding().path()).toList());
    }

    /** Files whose entries have no key for it: a chapter, works of both kinds, lists, the catalogue's own file, the house style. */
    @ParameterizedTest
    @CsvSource({
        "chapters/coast.md, '', second-title, 'chapters/coast.md: # The coast;; # Once more;'",
        "works.yaml, hallam-1931, work-never-cited, 'works.yaml: hallam-1931: {sign: Hallam, title: Coins}'",
        "works.bib, Orr1952, work-without-sign, 'works.bib: @book{Orr1952, author={A. Orr}, title={Coins}, year={1952}}'",
        "mints.yaml, pharos, mint-never-used, 'mints.yaml: lakonthos: {name: Lakonthos};pharos: {name: Pharos}'",
        "find-spots.yaml, ridge, find-spot-never-used, 'find-spots.yaml: ridge: {name: The ridge}'",
        "conventions.yaml, list, convention-never-used, 'conventions.yaml: list: {title: a list, by: A. Orr}'",
        "catalogue.yaml, groups.gold, group-value-of-no-coin, 'catalogue.yaml: groups: {gold: {coins: {denomination: [aureus]}}}'"})
    void theHouseExcusesWhatIsFoundInAnyOtherFile(String file, String entry, String code, String more) throws IOException {
        Map<String, String> files = files("findings: {reading-not-given: off}\n", "");
        String text = more.substring(more.indexOf(": ") + 2).replace(';', '\n') + "\n";
        files.merge(file, text, (before, after) -> file.equals("mints.yaml") ? after : before + after);
        if (file.startsWith("chapters/")) {
            files.put("catalogue.yaml", files.get("catalogue.yaml").replace("[catalogue]", "[" + file + ", catalogue]"));
        }
        if (file.equals("works.bib")) {
            files.merge("coins/lk-1.yaml", "references: [{work: Orr1952, number: '4'}]\n", String::concat);
        }
        assertTrue(codes(check(MemoryTree.ofText(files))).contains(code), code);
        String excuse = "excused: [{in: " + file + (entry.isEmpty() ? "" : ", entry: " + entry) + ", finding: " + code
                + ", because: it is meant so}]\n";
        files.merge("house-style.yaml", excuse, String::concat);
        Findings findings = check(MemoryTree.ofText(files));
        assertTrue(codes(findings).stream().noneMatch(found -> found.equals(code) || found.equals("excuse-without-cause")), code);
        assertEquals(List.of(code + " house-style.yaml"), findings.excused().stream()
                .map(one -> one.finding().code().id() + " " + one.where().file()).toList());
    }

    @Test
    void anExcuseForOneEntryOfAFileLeavesTheOthers() throws IOException {
        Map<String, String> files = files("findings: {reading-not-given: off}\n"
                + "excused: [{in: mints.yaml, entry: pharos, finding: mint-never-used, because: coins are expected}]\n", "");
        files.put("mints.yaml", "lakonthos: {name: Lakonthos}\npharos: {name: Pharos}\npharos-2: {name: New Pharos}\n");
        Findings findings = check(MemoryTree.ofText(files));
        assertEquals(List.of("mint-never-used pharos-2"), findings.all().stream()
                .map(one -> one.code().id() + " " + one.path()).toList());
    }

    @Test
    void aFileThatIsNotThereCannotBeExcused() throws IOException {
        assertEquals(List.of("missing-file"), codes(check(tree("findings: {reading-not-given: off}\n"
                + "excused: [{in: chapters/cost.md, finding: second-title, because: no reason}]\n", ""))));
    }

    @Test
    void noExcuseIsCalledNeedlessWhileTheEntryHasAnErrorThatMayHideTheFault() throws IOException {
        Findings findings = check(tree("", "damage: [chiped]\nexcused:\n  - {finding: weight-far-off, because: it is so}\n"));
        assertEquals(List.of("unknown-word"), codes(findings).stream().filter(code -> !code.equals(FAULT)).toList());
    }

    @Test
    void aKindOfFindingThatPressAloneShowsIsNotMissedByTheCheck() throws IOException {
        assertEquals(List.of(FAULT), codes(check(tree("", "excused:\n  - {finding: low-resolution, because: an old negative}\n"))));
    }

    @Test
    void aWeightTakenOutWithAReasonIsExcusedNotForgotten() throws IOException {
        Map<String, String> files = files("", "");
        files.put("coins/lk-1.yaml", files.get("coins/lk-1.yaml").replace("18 mm", "18 mm, axis: 6 h"));
        for (int i = 2; i < 9; i++) {
            files.put("coins/lk-" + i + ".yaml", files.get("coins/lk-1.yaml").replace("lk-1", "lk-" + i).replace("3.87", "3.8" + i));
        }
        files.put("coins/lk-9.yaml", files.get("coins/lk-1.yaml").replace("lk-1", "lk-9").replace("3.87", "1.20")
                + "weight-counts: {counts: no, why: plated}\n");
        Findings findings = check(MemoryTree.ofText(files));
        assertEquals(List.of(), codes(findings));
        assertEquals(List.of("weight-far-off: plated"), findings.excused().stream()
                .map(one -> one.finding().code().id() + ": " + one.because()).toList());
    }

    @Test
    void judgingWhatHasBeenJudgedChangesNothing() throws IOException {
        Exergue.Checked once = Exergue.check(tree("findings: {" + FAULT + ": error}\n", ""), Progress.SILENT);
        assertTrue(once.findings().hasErrors());
        Findings twice = Judgement.of(once.findings(), once.catalogue());
        assertEquals(once.findings().all(), twice.all());
        assertEquals(once.findings().excused(), twice.excused());
    }

    private static Tree tree(String style, String more) {
        return MemoryTree.ofText(files(style, more));
    }

    /** A coin whose axis nobody has given. */
    private static Map<String, String> files(String style, String more) {
        Map<String, String> files = new TreeMap<>();
        files.put("catalogue.yaml", "title: Coins of the Coast\nlanguage: en\nparts: {body: [catalogue]}\n");
        files.put("conventions.yaml", "bench:\n  title: measurements at the bench\n  by: the staff\n  weight: {instrument: balance}\n"
                + "  diameter: {instrument: calliper, direction: greatest}\n");
        files.put("mints.yaml", "lakonthos: {name: Lakonthos}\n");
        files.put("house-style.yaml", style + "coin-order: by id\n");
        files.put("types/owl.yaml", "id: owl\nmint: lakonthos\ndenomination: drachm\nmetal: silver\n"
                + "obverse: {description: Head right}\nreverse: {description: Owl left}\n");
        files.put("coins/lk-1.yaml", "id: lk-1\ntype: owl\nmeasured: {by: bench, weight: 3.87 g, diameter: 18 mm}\n" + more);
        return files;
    }

    private static Findings check(Tree tree) throws IOException {
        return Exergue.check(tree, Progress.SILENT).findings();
    }

    private static List<String> codes(Findings findings) {
        return findings.all().stream().map(finding -> finding.code().id()).toList();
    }
}
