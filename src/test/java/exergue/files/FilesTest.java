package exergue.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Trees show nothing that lies outside them; deliveries are whole or nothing. */
class FilesTest {

    @TempDir
    private Path folder;
    private Path source;

    @BeforeEach
    void layOut() throws IOException {
        source = Files.createDirectories(folder.resolve("source/coins/sub")).getParent().getParent();
        Files.writeString(source.resolve("catalogue.yaml"), "title: x");
        Files.writeString(source.resolve("coins/sub/b.yaml"), "id: b");
        Files.writeString(source.resolve("coins/a.yaml"), "id: a");
        Files.createDirectories(source.resolve(".git"));
        Files.writeString(source.resolve(".git/config"), "hidden");
        Files.writeString(source.resolve(".hidden.yaml"), "hidden");
        Files.writeString(folder.resolve("secret.yaml"), "secret");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", value = {
        "coins/a.yaml | coins/a.yaml", "./coins//a.yaml | coins/a.yaml", "coins/x/../a.yaml | coins/a.yaml",
        "../secret.yaml | -", "coins/../../secret.yaml | -", "/etc/passwd | -", "C:/x | -", "file:///etc/passwd | -",
        "http://a/b | -", "a\\b | -", "'' | -", ". | -", "coins/.. | -",
    })
    void aPathIsInsideOrItIsNothing(String path, String plain) {
        assertEquals(Optional.ofNullable(plain), Paths.inside(path));
    }

    @Test
    void aFolderShowsItsFilesSortedWithoutHiddenOnes() throws IOException {
        assertEquals(List.of("catalogue.yaml", "coins/a.yaml", "coins/sub/b.yaml"), new FolderTree(source).files());
    }

    @ParameterizedTest
    @ValueSource(strings = {"../secret.yaml", "coins/../../secret.yaml", "link.yaml", "linked/secret.yaml", "gone.yaml"})
    void nothingOutsideCanBeRead(String path) throws IOException {
        Files.createSymbolicLink(source.resolve("link.yaml"), folder.resolve("secret.yaml"));
        Files.createSymbolicLink(source.resolve("linked"), folder);
        Tree tree = new FolderTree(source);
        assertFalse(tree.has(path));
        assertFalse(tree.files().contains(path));
        assertThrows(NoSuchFileException.class, () -> tree.read(path));
        assertThrows(NoSuchFileException.class, () -> tree.size(path));
    }

    @Test
    void aLinkThatStaysInsideIsAFile() throws IOException {
        Files.createSymbolicLink(source.resolve("coins/c.yaml"), source.resolve("coins/a.yaml"));
        Tree tree = new FolderTree(source);
        assertTrue(tree.files().contains("coins/c.yaml"));
        assertEquals("id: a", new String(tree.read("coins/c.yaml"), StandardCharsets.UTF_8));
    }

    @Test
    void whatIsNoFolderIsNoTree() {
        assertThrows(NoSuchFileException.class, () -> new FolderTree(folder.resolve("nowhere")));
        assertThrows(NotDirectoryException.class, () -> new FolderTree(folder.resolve("secret.yaml")));
    }

    @Test
    void aSelectionHidesTheRestInEveryWay() throws IOException {
        Tree tree = new SelectedTree(MemoryTree.ofText(Map.of("a", "1", "b", "2")), path -> !path.equals("b"));
        assertEquals(List.of("a"), tree.files());
        assertTrue(tree.has("a") && !tree.has("b"));
        assertArrayEquals(new byte[] {'1'}, tree.read("a"));
        assertThrows(NoSuchFileException.class, () -> tree.read("b"));
        assertThrows(NoSuchFileException.class, () -> tree.size("b"));
    }

    @Test
    void aDeliveryIsSeenOnlyWhenItIsDelivered() throws IOException {
        Path book = Files.writeString(Files.createDirectories(folder.resolve("book")).resolve("a.pdf"), "old");
        try (Delivery delivery = new Delivery(folder.resolve("book"))) {
            delivery.write("a.pdf", new byte[] {'n'});
            delivery.write("deep/b.json", new byte[] {'n'});
            assertEquals("old", Files.readString(book));
            assertEquals(List.of(book, folder.resolve("book/deep/b.json")), delivery.deliver());
        }
        assertEquals("n", Files.readString(book));
        assertEquals(2, filesIn(folder.resolve("book")));
    }

    @Test
    void aDeliveryThatIsGivenUpLeavesNoTrace() throws IOException {
        Path book = Files.writeString(Files.createDirectories(folder.resolve("book")).resolve("a.pdf"), "old");
        try (Delivery delivery = new Delivery(folder.resolve("book"))) {
            delivery.write("a.pdf", new byte[] {'n'});
        }
        assertEquals("old", Files.readString(book));
        assertEquals(1, filesIn(folder.resolve("book")));
    }

    @Test
    void aDeliveryThatIsGivenUpTakesAwayTheFoldersItMade() throws IOException {
        try (Delivery delivery = new Delivery(folder.resolve("new/book"))) {
            delivery.write("deep/a.pdf", new byte[] {'n'});
        }
        assertTrue(Files.notExists(folder.resolve("new")));
        Files.createDirectories(folder.resolve("old"));
        try (Delivery delivery = new Delivery(folder.resolve("old/book"))) {
            Files.writeString(folder.resolve("old/book/note.txt"), "someone else's");
        }
        assertTrue(Files.exists(folder.resolve("old/book/note.txt")));
        try (Delivery delivery = new Delivery(folder.resolve("old"))) {
            delivery.write("a.pdf", new byte[] {'n'});
        }
        assertTrue(Files.exists(folder.resolve("old")));
    }

    @Test
    void whatARunThatWasKilledLeftIsTakenAway() throws IOException {
        Path book = Files.createDirectories(folder.resolve("book"));
        Path dead = Files.writeString(book.resolve(".a.pdf.99999999999.part"), "half"); // above any number of a process
        Path alive = Files.writeString(book.resolve(".a.pdf." + ProcessHandle.current().parent().orElseThrow().pid() + ".part"), "");
        Path theirs = Files.writeString(book.resolve(".b.pdf.99999999999.part"), "of another program, for all we know");
        try (Delivery delivery = new Delivery(book)) {
            delivery.write("a.pdf", new byte[] {'n'});
            delivery.deliver();
        }
        assertTrue(Files.notExists(dead));
        assertTrue(Files.exists(alive));
        assertTrue(Files.exists(theirs));
    }

    @Test
    void whatMustBeNewIsNeverWrittenOverAnything() throws IOException {
        Path dangling = Files.createSymbolicLink(Files.createDirectories(folder.resolve("book")).resolve("a.pdf"),
                folder.resolve("nowhere"));
        try (Delivery delivery = new Delivery(folder.resolve("book"))) {
            assertThrows(FileAlreadyExistsException.class, () -> delivery.writeNew("a.pdf", new byte[] {'n'}));
        }
        assertTrue(Files.isSymbolicLink(dangling));
    }

    private static long filesIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).count();
        }
    }

    /** As where a command is given without a folder: the paths of its files have no folder then. */
    @Test
    void theFolderOneIsInIsATree() throws IOException {
        FolderTree here = new FolderTree(Path.of(""));
        assertTrue(here.has("pom.xml"));
        assertFalse(here.has("no-such-file.xml"));
        assertTrue(here.read("pom.xml").length > 0);
    }
}
