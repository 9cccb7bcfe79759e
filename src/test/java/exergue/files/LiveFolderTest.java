package exergue.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder at one moment and the next. */
class LiveFolderTest {

    @TempDir
    private Path root;
    private LiveFolder folder;

    @BeforeEach
    void layOut() throws IOException {
        write("catalogue.yaml", "title: One\n");
        write("coins/a.yaml", "id: a\n");
        write("photographs/a.jpg", "no picture");
        write(".git/config", "hidden");
        folder = new LiveFolder(root, Instant::now);
    }

    private void write(String path, String text) throws IOException {
        Files.createDirectories(root.resolve(path).getParent());
        Files.writeString(root.resolve(path), text);
    }

    private static String text(Tree tree, String path) throws IOException {
        return new String(tree.read(path), StandardCharsets.UTF_8);
    }

    @Test
    void aMomentStaysAsItWas() throws IOException {
        LiveFolder.Moment before = folder.now();
        write("coins/a.yaml", "id: another\n");
        assertEquals("id: a\n", text(before, "coins/a.yaml"));
        assertEquals(6, before.size("coins/a.yaml"));
        assertArrayEquals("id:".getBytes(StandardCharsets.UTF_8), before.start("coins/a.yaml", 3));
        assertEquals("id: another\n", text(folder.now(), "coins/a.yaml"));
        assertEquals(List.of("catalogue.yaml", "coins/a.yaml", "photographs/a.jpg"), before.files());
    }

    @Test
    void whatHasChangedSince() throws IOException {
        LiveFolder.Moment before = folder.now();
        assertEquals(Set.of(), folder.now().since(before));
        write("coins/b.yaml", "id: b\n");
        write("photographs/a.jpg", "another picture");
        Files.delete(root.resolve("catalogue.yaml"));
        LiveFolder.Moment after = folder.now();
        assertEquals(Set.of("catalogue.yaml", "coins/b.yaml", "photographs/a.jpg"), after.since(before));
        assertFalse(after.has("catalogue.yaml"));
        assertThrows(NoSuchFileException.class, () -> after.size("catalogue.yaml"));
    }

    /** The price of not reading what seems the same; an editor that sets the time back as it was is not known. */
    @Test
    void aTextOfTheSameSizeAndTimeIsTakenForTheSame() throws IOException {
        FileTime time = Files.getLastModifiedTime(root.resolve("coins/a.yaml"));
        folder.now();
        write("coins/a.yaml", "id: b\n");
        Files.setLastModifiedTime(root.resolve("coins/a.yaml"), time);
        assertEquals("id: a\n", text(folder.now(), "coins/a.yaml"));
    }

    @Test
    void aLinkThatLeadsOutIsNoPartOfIt(@TempDir Path elsewhere) throws IOException {
        Files.writeString(elsewhere.resolve("secret.yaml"), "x");
        Files.createSymbolicLink(root.resolve("coins/secret.yaml"), elsewhere.resolve("secret.yaml"));
        LiveFolder.Moment now = folder.now();
        assertFalse(now.files().contains("coins/secret.yaml"));
        assertThrows(IOException.class, () -> now.read("coins/secret.yaml"));
    }

    @Test
    void theWatchWakesForAFileInANewFolder() throws Exception {
        try (FolderWatch watch = new FolderWatch(root)) {
            write("types/new/t.yaml", "id: t\n");
            LiveFolder.Moment before = folder.now();
            write("types/new/t.yaml", "id: t2\n");
            assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
                while (folder.now().since(before).isEmpty()) {
                    assertTrue(watch.await());
                }
            });
        }
    }

    @Test
    void aClosedWatchSaysSo() throws Exception {
        FolderWatch watch = new FolderWatch(root);
        watch.close();
        assertFalse(watch.await());
    }
}
