package exergue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.files.FolderTree;
import exergue.files.MemoryTree;
import exergue.files.OverlaidTree;
import exergue.files.Tree;
import exergue.finding.Finding;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A file that cannot be read is one fault, however many files point to what stands in it. */
class UnreadTest {

    private static final String OPEN_QUOTE = "x: \"never closed\n";
    private static final String MERGED = "<<<<<<< HEAD\nx: {name: One}\n=======\nx: {name: Other}\n>>>>>>> editor\n";

    @ParameterizedTest
    @ValueSource(strings = {"mints.yaml", "rulers.yaml", "conventions.yaml", "works.yaml", "find-spots.yaml", "collections.yaml"})
    void aListThatCannotBeReadIsTheOnlyFault(String file) throws IOException {
        assertEquals(List.of("unclosed-quote " + file), told(file, OPEN_QUOTE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"mints.yaml", "rulers.yaml", "conventions.yaml", "works.yaml", "find-spots.yaml", "collections.yaml"})
    void soIsAListThatIsHalfMerged(String file) throws IOException {
        assertEquals(List.of("merge-conflict " + file), told(file, MERGED).stream().distinct().toList());
    }

    @ParameterizedTest
    @CsvSource({"types/ark-t01.yaml, unclosed-quote", "coins/ark-001.yaml, unclosed-quote"})
    void soIsAnEntry(String file, String code) throws IOException {
        assertEquals(List.of(code + " " + file), told(file, OPEN_QUOTE));
    }

    private static List<String> told(String file, String text) throws IOException {
        Tree tree = new OverlaidTree(new FolderTree(Path.of("catalogue-src")), MemoryTree.ofText(Map.of(file, text)));
        return Exergue.check(tree, stage -> { }).findings().all().stream().map(UnreadTest::words).toList();
    }

    private static String words(Finding finding) {
        return finding.code().id() + " " + finding.place().file();
    }
}
