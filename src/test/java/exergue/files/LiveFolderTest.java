package exergue.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
        FileTime time = FileTime.from(Instant.now().minusSeconds(60));
        Files.setLastModifiedTime(root.resolve("coins/a.yaml"), time);
        folder.now();
        write("coins/a.yaml", "id: b\n");
        Files.setLastModifiedTime(root.resolve("coins/a.yaml"), time);
        assertEquals("id: a\n", text(folder.now(), "coins/a.yaml"));
    }

    /** Some disks note times in steps of two seconds: two digits exchanged within them change neither size nor time. */
    @Test
    void aSecondChangeWithinOneTickOfTheDiskIsSeen() throws IOException {
        FileTime time = Files.getLastModifiedTime(root.resolve("coins/a.yaml"));
        LiveFolder.Moment before = folder.now();
        write("coins/a.yaml", "id: b\n");
        Files.setLastModifiedTime(root.resolve("coins/a.yaml"), time);
        LiveFolder.Moment after = folder.now();
        assertEquals("id: b\n", text(after, "coins/a.yaml"));
        assertEquals(Set.of("coins/a.yaml"), after.since(before));
    }

    @Test
    void aTextThatIsSavedAsItWasHasNotChanged() throws IOException {
        LiveFolder.Moment before = folder.now();
        Files.setLastModifiedTime(root.resolve("coins/a.yaml"), FileTime.from(Instant.now().minusSeconds(60)));
        assertEquals(Set.of(), folder.now().since(before));
    }

    @ParameterizedTest
    @ValueSource(strings = {"coins/a.yaml~", "coins/#a.yaml#", "coins/.#a.yaml", "coins/.a.yaml.swp", "coins/4913", "coins/~$a.yaml"})
    void whatEditorsLeaveBesideIsNoPartOfIt(String path) throws IOException {
        LiveFolder.Moment before = folder.now();
        write(path, "id: a\n");
        LiveFolder.Moment after = folder.now();
        assertEquals(before.files(), after.files());
        assertEquals(Set.of(), after.since(before));
        assertEquals(before.files(), new FolderTree(root).files());
    }

    /** As Git and editors do it while the folder is being looked at. */
    @Test
    void aFileThatIsGoneBeforeItIsReadIsNoFault() throws Exception {
        AtomicBoolean enough = new AtomicBoolean();
        CompletableFuture<Void> other = CompletableFuture.runAsync(() -> {
            try {
                for (int i = 0; !enough.get(); i++) {
                    write("coins/new" + i + ".yaml", "id: new\n");
                    Files.delete(root.resolve("coins/new" + i + ".yaml"));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        for (int i = 0; i < 500; i++) {
            LiveFolder.Moment now = folder.now();
            for (String path : now.files()) {
                assertTrue(now.size(path) > -1 && (!path.endsWith(".yaml") || now.read(path).length > -1));
            }
        }
        enough.set(true);
        other.get();
    }

    @Test
    void theWatchGoesOnWhenTheFolderIsBack() throws Exception {
        try (FolderWatch watch = new FolderWatch(root.resolve("coins"))) {
            LiveFolder coins = new LiveFolder(root.resolve("coins"), Instant::now);
            Files.delete(root.resolve("coins/a.yaml"));
            Files.delete(root.resolve("coins"));
            assertTrue(watch.await());
            assertThrows(NoSuchFileException.class, coins::now);
            assertTrue(watch.await());
            write("coins/b.yaml", "id: b\n");
            assertTrue(watch.await());
            assertTrue(watch.watches(root.resolve("coins")));
            assertEquals(List.of("b.yaml"), coins.now().files());
        }
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
