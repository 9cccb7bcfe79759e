package exergue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.edition.Book;
import exergue.edition.DataRow;
import exergue.edition.DataRows;
import exergue.edition.PageMap;
import exergue.files.FolderTree;
import exergue.files.MemoryTree;
import exergue.files.Tree;
import exergue.files.TreeOver;
import exergue.finding.Finding;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The whole pipeline up to the pages: in whatever order the files of a folder come, no value and no finding changes. */
class OrderOfFilesTest {

    private static final Path DEMONSTRATION = Path.of("catalogue-src");

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void shufflingTheFilesChangesNoValue(long seed) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        Tree folder = new FolderTree(DEMONSTRATION);
        for (String file : folder.files()) {
            files.put(file, folder.read(file));
        }
        files.merge("coins/ark-001.yaml", "also-measuredx: []\n".getBytes(java.nio.charset.StandardCharsets.UTF_8),
                OrderOfFilesTest::joined);
        Exergue.Checked sorted = Exergue.check(new MemoryTree(files), Progress.SILENT);
        Exergue.Checked shuffled = Exergue.check(new Shuffled(new MemoryTree(files), seed), Progress.SILENT);
        assertEquals(rows(sorted), rows(shuffled));
        assertEquals(findings(sorted), findings(shuffled));
    }

    private static byte[] joined(byte[] one, byte[] other) {
        byte[] both = java.util.Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, both, one.length, other.length);
        return both;
    }

    private static List<DataRow> rows(Exergue.Checked checked) {
        Book book = checked.book().orElseThrow();
        List<DataRow> rows = DataRows.of(checked.catalogue().orElseThrow(), book, PageMap.UNKNOWN);
        assertEquals(checked.catalogue().orElseThrow().coins().size(), rows.size());
        return rows;
    }

    private static List<Finding> findings(Exergue.Checked checked) {
        List<Finding> findings = checked.findings().all();
        assertEquals(false, findings.isEmpty());
        return findings;
    }

    /** A tree that lists its files in another order every time. */
    private static final class Shuffled extends TreeOver {

        private final Random random;

        Shuffled(Tree tree, long seed) {
            super(tree);
            this.random = new Random(seed);
        }

        @Override
        public List<String> files() throws IOException {
            List<String> files = new ArrayList<>(super.files());
            Collections.shuffle(files, random);
            return files;
        }
    }
}
