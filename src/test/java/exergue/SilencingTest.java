package exergue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import exergue.files.FolderTree;
import exergue.files.MemoryTree;
import exergue.files.OverlaidTree;
import exergue.files.Tree;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Severity;
import exergue.source.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the page of each kind of finding says of silencing it holds for every kind that checking raises. */
class SilencingTest {

    private static final Path BROKEN = Path.of("src/test/resources/broken");

    static List<String> codes() {
        return AllCodes.all().stream().filter(code -> code.severity() != Severity.ERROR).map(Code::id)
                .filter(code -> Files.isDirectory(BROKEN.resolve(code))).filter(SilencingTest::isRaised).sorted().toList();
    }

    private static boolean isRaised(String code) {
        try {
            return !of(code, check(tree(code))).isEmpty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("codes")
    void aHouseTurnsItOff(String code) throws IOException {
        assertEquals(List.of(), of(code, check(with(code, "findings:\n  " + code + ": off\n"))));
    }

    @ParameterizedTest
    @MethodSource("codes")
    void aHouseMakesItAnError(String code) throws IOException {
        assertEquals(Set.of(Severity.ERROR), of(code, check(with(code, "findings:\n  " + code + ": error\n"))).stream()
                .map(Finding::severity).collect(Collectors.toSet()));
    }

    @ParameterizedTest
    @MethodSource("codes")
    void aHouseExcusesItInItsFile(String code) throws IOException {
        Set<String> files = of(code, check(tree(code))).stream().map(finding -> finding.place().file())
                .collect(Collectors.toCollection(TreeSet::new));
        String excused = files.stream().map(file -> "  - {in: '" + file + "', finding: " + code + ", because: it is right so}\n")
                .collect(Collectors.joining("", "excused:\n", ""));
        Findings findings = check(with(code, excused));
        assertEquals(List.of(), of(code, findings));
        assertNotEquals(0, findings.excused().size());
    }

    private static Tree with(String code, String house) throws IOException {
        Tree tree = tree(code);
        String own = tree.has("house-style.yaml") ? new String(tree.read("house-style.yaml"), StandardCharsets.UTF_8) : "";
        String key = house.substring(0, house.indexOf('\n') + 1);
        String both = own.contains(key) ? own.replace(key, house) : own + house;
        return new OverlaidTree(tree, MemoryTree.ofText(Map.of("house-style.yaml", both)));
    }

    /** Some lie in the repository without the files that every catalogue has. */
    private static Tree tree(String code) throws IOException {
        Path folder = BROKEN.resolve(code);
        return Files.exists(folder.resolve("catalogue.yaml")) ? new FolderTree(folder) : Trees.overlaid(folder);
    }

    private static List<Finding> of(String code, Findings findings) {
        return findings.all().stream().filter(finding -> finding.code().id().equals(code)).toList();
    }

    private static Findings check(Tree tree) throws IOException {
        return Exergue.check(tree, Progress.SILENT).findings();
    }
}
