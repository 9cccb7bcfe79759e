package exergue.review;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.GitFolder;
import exergue.review.git.RevisionTree;
import exergue.review.git.Revisions;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Folders as they were at a commit. */
class RevisionsTest {

    @TempDir
    private Path folder;

    private GitFolder git;

    @BeforeEach
    void twoCommits() throws IOException {
        Repositories.commit(folder, Map.of("book/catalogue.yaml", "title: Old\n", "book/.hidden", "x", "book/coins/a.yaml", "id: a\n",
                "elsewhere.txt", "x"), "first");
        Repositories.commit(folder, Map.of("book/catalogue.yaml", "title: New\n", "book/coins/b.yaml", "id: b\n"), "second");
        git = GitFolder.around(folder.resolve("book")).orElseThrow();
    }

    @Test
    void aRevisionIsATreeOfItsFolder() throws IOException {
        try (Revisions revisions = Revisions.open(git)) {
            RevisionTree old = revisions.tree("first", git.inside()).orElseThrow();
            assertEquals(List.of("catalogue.yaml", "coins/a.yaml"), old.files());
            assertEquals("title: Old\n", new String(old.read("catalogue.yaml"), StandardCharsets.UTF_8));
            assertEquals(11, old.size("catalogue.yaml"));
            assertArrayEquals("title".getBytes(StandardCharsets.UTF_8), old.start("catalogue.yaml", 5));
            assertFalse(old.has("../elsewhere.txt"));
            assertThrows(IOException.class, () -> old.read("coins/b.yaml"));
            RevisionTree now = revisions.tree("HEAD", git.inside()).orElseThrow();
            assertEquals(List.of("catalogue.yaml", "coins/a.yaml", "coins/b.yaml"), now.files());
            assertEquals(old.contentName("coins/a.yaml"), now.contentName("coins/a.yaml"));
            assertEquals(old.commit(), revisions.tree("HEAD~1", "").orElseThrow().commit());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"no-such-branch", "HEAD~9", "HEAD^^^", "::", "@{", "a..b", "HEAD^{tree}", "0000000000000000000000000000000000000000"})
    void whatNamesNoCommitIsNoTree(String revision) throws IOException {
        try (Revisions revisions = Revisions.open(git)) {
            assertTrue(revisions.tree(revision, "").isEmpty());
        }
    }

    @Test
    void aFolderThatWasNotThereHasNoFiles() throws IOException {
        try (Revisions revisions = Revisions.open(git)) {
            assertEquals(List.of(), revisions.tree("HEAD", "attic").orElseThrow().files());
            assertEquals(List.of(), revisions.tree("HEAD", "book/catalogue.yaml").orElseThrow().files());
        }
    }

    @Test
    void readingWritesNothing() throws IOException {
        Map<Path, String> before = everything();
        try (Revisions revisions = Revisions.open(git)) {
            RevisionTree tree = revisions.tree("HEAD", "").orElseThrow();
            for (String file : tree.files()) {
                tree.read(file);
            }
            assertEquals(List.of("HEAD", "first", "main", "second"), revisions.names());
        }
        assertEquals(before, everything());
    }

    private Map<Path, String> everything() throws IOException {
        Map<Path, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.toList()) {
                all.put(file, Files.getLastModifiedTime(file) + (Files.isRegularFile(file) ? " " + Files.size(file) : ""));
            }
        }
        return all;
    }

    @Test
    void severalThreadsCanReadAtOnce() throws IOException {
        Map<String, String> many = new TreeMap<>();
        for (int i = 0; i < 400; i++) {
            many.put("book/coins/c" + i + ".yaml", "id: c" + i + "\nnote: " + "so and so ".repeat(i % 50) + "\n");
        }
        Repositories.commit(folder, many, "many");
        try (Revisions revisions = Revisions.open(git)) {
            RevisionTree tree = revisions.tree("many", "").orElseThrow();
            assertEquals(List.of(), many.keySet().parallelStream().filter(path -> !same(many.get(path), tree, path)).toList());
        }
    }

    private static boolean same(String text, RevisionTree tree, String path) {
        try {
            return tree.size(path) == text.length() && new String(tree.read(path), StandardCharsets.UTF_8).equals(text)
                    && tree.start(path, 2).length == 2;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void theRepositoryOfAFolderIsFoundFromInside() throws IOException {
        assertEquals("book/coins", GitFolder.around(folder.resolve("book/coins")).orElseThrow().inside());
        assertEquals("", GitFolder.around(folder).orElseThrow().inside());
        assertEquals("book/gone/for/good", GitFolder.around(folder.resolve("book/gone/for/good")).orElseThrow().inside());
    }
}
