package exergue.edition;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.Exergue;
import exergue.Golden;
import exergue.Progress;
import exergue.files.FolderTree;
import exergue.finding.Code;
import exergue.finding.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each code of the edition has a tree with just that fault, and the words that are said to it before any page is set. */
class BrokenMethodsTest {

    private static final Path BROKEN = Path.of("src/test/resources/broken");
    private static final Path APPROVED = Path.of("src/test/resources/golden/edition");

    static List<String> codes() {
        return EditionCodes.all().stream().map(Code::id).toList();
    }

    @ParameterizedTest
    @MethodSource("codes")
    void theCheckFindsThisFaultAndNoOther(String code) throws IOException {
        List<Finding> findings = check(code).findings().all();
        assertEquals(List.of(code), findings.stream().map(finding -> finding.code().id()).toList());
        Golden.check(APPROVED.resolve(code).resolve("findings.txt"), findings.stream().map(finding ->
                finding.severity().word() + " [" + code + "] " + finding.place() + "\n  " + finding.what() + "\n  "
                        + finding.remedy() + "\n").collect(Collectors.joining("\n")));
    }

    static List<String> trees() throws IOException {
        try (Stream<Path> trees = Files.list(BROKEN)) {
            return trees.map(tree -> tree.getFileName().toString()).sorted().toList();
        }
    }

    /** Findings of one kind must not hide those of another, so the book of a faulty catalogue is arranged too. */
    @ParameterizedTest
    @MethodSource("trees")
    void anyFaultyCatalogueCanBeArranged(String code) {
        assertDoesNotThrow(() -> check(code));
    }

    private static Exergue.Checked check(String code) throws IOException {
        return Exergue.check(new FolderTree(BROKEN.resolve(code)), Progress.SILENT);
    }
}
