package exergue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.files.MemoryTree;
import exergue.finding.Finding;
import exergue.finding.Severity;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class OneCauseTest {

    private static final String CONVENTIONS = """
            bench: {title: measurements at the bench, by: the staff, weight: {instrument: a balance, resolution: 0.01 g}}
            list: {title: the hand-list, by: the museum, weight: {instrument: a balance}}
            """;

    private static List<Finding> findings(String bench, String list, int others) throws IOException {
        Map<String, String> files = new TreeMap<>();
        files.put("catalogue.yaml", "title: Coins\nlanguage: en\nparts: {body: [methods, catalogue]}\n");
        files.put("conventions.yaml", CONVENTIONS);
        files.put("mints.yaml", "lampron: {name: Lampron}\n");
        files.put("types/owl.yaml", "id: owl\nmint: lampron\ndenomination: stater\nmetal: silver\nmade: cast\n"
                + "obverse: {description: Head right}\nreverse: {description: Owl left}\n");
        for (int i = 1; i <= others; i++) {
            files.put("coins/other-" + i + ".yaml", coin("other-" + i, "10.5" + i + " g", "10.5" + i + " g"));
        }
        files.put("coins/lk-1.yaml", coin("lk-1", bench, list));
        return Exergue.check(MemoryTree.ofText(files), stage -> { }).findings().all();
    }

    private static String coin(String id, String bench, String list) {
        return "id: " + id + "\ntype: owl\nmeasured: {by: bench, weight: " + bench + ", diameter: 'missing: not taken'}\n"
                + "also-measured:\n  - {by: list, weight: " + list + "}\n";
    }

    private static List<String> told(List<Finding> findings) {
        return findings.stream().filter(finding -> finding.path().endsWith(".weight"))
                .map(finding -> finding.code().id() + " " + finding.path() + " " + finding.related().size()).toList();
    }

    @Test
    void aDecimalPointOnePlaceOffIsOneFinding() throws IOException {
        assertEquals(List.of("weight-far-off measured.weight 1"), told(findings("1.054 g", "10.54 g", 6)));
    }

    @Test
    void withoutAGroupTheHandsAreHeldAgainstEachOther() throws IOException {
        assertEquals(List.of("hands-disagree also-measured[1].weight 1"), told(findings("10.54 g", "15.04 g", 0)));
    }

    @Test
    void aFigureThatIsOnlyTooFineKeepsItsOwnFinding() throws IOException {
        assertEquals(List.of("finer-than-instrument measured.weight 0"), told(findings("10.541 g", "10.54 g", 6)));
    }

    @Test
    void aKeyWithoutAValueWhereAFigureIsWantedIsOneFinding() throws IOException {
        Map<String, String> files = new TreeMap<>(Map.of("catalogue.yaml", "title: Coins\nlanguage: en\nparts: {body: [catalogue]}\n",
                "conventions.yaml", CONVENTIONS, "mints.yaml", "lampron: {name: Lampron}\n",
                "types/owl.yaml", "id: owl\nmint: lampron\ndenomination: stater\nmetal: silver\nobverse: {description: Head}\n",
                "coins/lk-1.yaml", "id: lk-1\ntype: owl\nmeasured:\n  by: bench\n  weight:\n  diameter: 18 mm\n  axis: 6 h\n"));
        assertEquals(List.of("reading-not-given at line 5"), Exergue.check(MemoryTree.ofText(files), stage -> { }).findings().all().stream()
                .filter(finding -> finding.path().equals("measured.weight"))
                .map(finding -> finding.code().id() + " at line " + finding.place().line()).toList());
    }

    @Test
    void aNameWithCapitalsIsToldOnceAndMended() throws IOException {
        Map<String, String> files = new TreeMap<>(Map.of("catalogue.yaml", "title: Coins\nlanguage: en\nparts: {body: [catalogue]}\n",
                "mints.yaml", "lampron: {name: Lampron}\n", "types/owl.yaml", "id: owl\nmint: Lampron\ndenomination: stater\n"
                        + "metal: Argentum\nobverse: {description: Head}\nreverse: {description: Owl}\n"));
        assertEquals(List.of("unknown-mint Write “lampron”.", "not-an-id Write “argentum”, here and wherever it is named."),
                Exergue.check(MemoryTree.ofText(files), stage -> { }).findings().all().stream()
                        .filter(finding -> finding.severity() == Severity.ERROR)
                        .map(finding -> finding.code().id() + " " + finding.remedy()).toList());
    }
}
