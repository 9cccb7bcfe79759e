package exergue.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a cache keeps, and that it forgets rather than err. */
class CacheTest {

    private static final byte[] BYTES = {1, 2, 3, 4};

    @TempDir
    Path folder;

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }

    @Test
    void whatWasPutIsThereAlsoForTheNextRun() {
        new FolderCache(folder).put("abcd", BYTES);
        assertArrayEquals(BYTES, new FolderCache(folder).get("abcd").orElseThrow());
        assertEquals(Optional.empty(), new FolderCache(folder).get("abce"));
    }

    @Test
    void theFolderIsMadeOnlyForSomething() {
        Path none = folder.resolve("none");
        assertEquals(Optional.empty(), new FolderCache(none).get("abcd"));
        assertTrue(Files.notExists(none));
    }

    @Test
    void aFolderThatIsDeletedMeanwhileIsMadeAgain() throws IOException {
        FolderCache cache = new FolderCache(folder.resolve("cache"));
        cache.put("abcd", BYTES);
        for (Path file : files(folder)) {
            Files.delete(file);
        }
        Files.delete(folder.resolve("cache/ab"));
        Files.delete(folder.resolve("cache"));
        assertEquals(Optional.empty(), cache.get("abcd"));
        cache.put("abcd", BYTES);
        assertArrayEquals(BYTES, cache.get("abcd").orElseThrow());
    }

    @Test
    void aDamagedFileIsForgotten() throws IOException {
        FolderCache cache = new FolderCache(folder);
        cache.put("abcd", BYTES);
        Path file = files(folder).get(0);
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length - 1]++;
        Files.write(file, bytes);
        assertEquals(Optional.empty(), cache.get("abcd"));
        Files.write(file, new byte[5]);
        assertEquals(Optional.empty(), cache.get("abcd"));
    }

    @Test
    void whereNothingCanBeWrittenNothingIsKept() throws IOException {
        Path file = Files.write(folder.resolve("file"), BYTES);
        FolderCache cache = new FolderCache(file);
        cache.put("abcd", BYTES);
        assertEquals(Optional.empty(), cache.get("abcd"));
    }

    @Test
    void aNameCannotLeadOutOfTheFolder() {
        FolderCache cache = new FolderCache(folder);
        assertThrows(IllegalArgumentException.class, () -> cache.get("../secret"));
        assertThrows(IllegalArgumentException.class, () -> cache.put("a/b/c", BYTES));
    }

    @Test
    void manyAtOnceLeaveWholeFilesAndNothingBesideThem() throws Exception {
        ExecutorService many = Executors.newFixedThreadPool(4);
        List<Callable<Boolean>> work = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            FolderCache cache = new FolderCache(folder);
            String name = "name-" + i % 7;
            work.add(() -> {
                cache.put(name, name.getBytes(java.nio.charset.StandardCharsets.UTF_8));
                return cache.get(name).filter(bytes -> bytes.length == name.length()).isPresent();
            });
        }
        for (Future<Boolean> done : many.invokeAll(work)) {
            assertTrue(done.get());
        }
        many.shutdown();
        assertEquals(7, files(folder).size());
    }
}
