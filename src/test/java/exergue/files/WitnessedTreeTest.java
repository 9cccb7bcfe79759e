package exergue.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When a file need not be opened to know what is in it, and when it must be. */
class WitnessedTreeTest {

    private static final Instant CHANGED = Instant.parse("2020-05-01T12:00:00Z");
    private static final Instant LATER = CHANGED.plusSeconds(3600);

    @TempDir
    private Path folder;
    private final Cache cache = new MemoryCache();

    @BeforeEach
    void layOut() throws IOException {
        write("photo.jpg", 'a', 5000, CHANGED);
        write("coin.yaml", 'a', 200, CHANGED);
    }

    private void write(String name, char filledWith, int length, Instant changed) throws IOException {
        byte[] bytes = new byte[length];
        Arrays.fill(bytes, (byte) filledWith);
        Files.setLastModifiedTime(Files.write(folder.resolve(name), bytes), FileTime.from(changed));
    }

    /** Each run opens the folder anew. */
    private OpenedFiles run(Instant opened) throws IOException {
        return new OpenedFiles(new FolderTree(folder, opened));
    }

    private String digest(OpenedFiles tree, String path) throws IOException {
        return new WitnessedTree(tree, cache).digest(path);
    }

    /** The digest of the message "abc": the example of FIPS 180-4 that NIST publishes beside it. */
    @Test
    void theDigestIsThatOfTheStandard() throws IOException {
        Files.writeString(folder.resolve("abc"), "abc");
        for (Tree tree : List.of(new FolderTree(folder), new WitnessedTree(new FolderTree(folder), cache),
                MemoryTree.ofText(java.util.Map.of("abc", "abc")))) {
            assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", tree.digest("abc"));
        }
    }

    @Test
    void theSecondRunDoesNotOpenAPhotographThatIsTheSame() throws IOException {
        OpenedFiles first = run(LATER);
        String digest = digest(first, "photo.jpg");
        assertEquals(List.of("photo.jpg"), first.opened());
        OpenedFiles second = run(LATER);
        WitnessedTree tree = new WitnessedTree(second, cache);
        assertEquals(digest, tree.digest("photo.jpg"));
        assertArrayEquals("aaaaaaaa".getBytes(StandardCharsets.US_ASCII), tree.start("photo.jpg", 8));
        assertEquals(List.of(), second.opened());
    }

    @Test
    void aChangeOfTheSameSizeAtAnotherTimeIsSeen() throws IOException {
        String digest = digest(run(LATER), "photo.jpg");
        write("photo.jpg", 'b', 5000, CHANGED.plusMillis(1));
        OpenedFiles second = run(LATER);
        assertNotEquals(digest, digest(second, "photo.jpg"));
        assertEquals(List.of("photo.jpg"), second.opened());
    }

    @Test
    void anotherSizeAtTheSameTimeIsSeen() throws IOException {
        String digest = digest(run(LATER), "photo.jpg");
        write("photo.jpg", 'a', 5001, CHANGED);
        assertNotEquals(digest, digest(run(LATER), "photo.jpg"));
    }

    /** A photograph may be changed again within one tick of the disk’s clock, and bear the same time. */
    @ParameterizedTest
    @CsvSource({"-3600, 2", "0, 2", "2, 2", "3, 1"})
    void whatWasChangedJustBeforeIsNotTrusted(int openedSecondsAfter, int timesOpened) throws IOException {
        OpenedFiles first = run(CHANGED.plusSeconds(openedSecondsAfter));
        OpenedFiles second = run(CHANGED.plusSeconds(openedSecondsAfter));
        digest(first, "photo.jpg");
        digest(second, "photo.jpg");
        assertEquals(timesOpened, first.opened().size() + second.opened().size());
    }

    /** The clock of the machine stands where it stood; the file was written twice within what it calls one moment. */
    @Test
    void twoChangesInOneTickAreTold() throws IOException {
        String digest = digest(run(CHANGED.plusMillis(500)), "photo.jpg");
        write("photo.jpg", 'b', 5000, CHANGED);
        assertNotEquals(digest, digest(run(LATER), "photo.jpg"));
    }

    @Test
    void anotherFolderWithTheSameCacheIsAnotherMatter() throws IOException {
        digest(run(LATER), "photo.jpg");
        Path other = Files.createDirectory(folder.resolve("other"));
        Files.setLastModifiedTime(Files.write(other.resolve("photo.jpg"), new byte[5000]), FileTime.from(CHANGED));
        OpenedFiles tree = new OpenedFiles(new FolderTree(other, LATER));
        assertEquals(Digest.of(new byte[5000]), digest(tree, "photo.jpg"));
    }

    @Test
    void smallFilesAreReadEachTimeAndNotRemembered() throws IOException {
        OpenedFiles tree = run(LATER);
        assertEquals(digest(tree, "coin.yaml"), digest(tree, "coin.yaml"));
        assertEquals(List.of("coin.yaml", "coin.yaml"), tree.opened());
    }

    @Test
    void withinOneRunADigestIsMadeOnceEvenIfNothingCanBeKept() throws IOException {
        OpenedFiles tree = run(CHANGED);
        WitnessedTree remembering = new WitnessedTree(tree, cache);
        assertEquals(remembering.digest("photo.jpg"), remembering.digest("photo.jpg"));
        assertEquals(List.of("photo.jpg"), tree.opened());
    }

    @Test
    void aTreeWithoutWitnessesIsRead() throws IOException {
        Tree tree = new WitnessedTree(MemoryTree.ofText(java.util.Map.of("a", "x".repeat(5000))), cache);
        assertTrue(tree.witness("a").isEmpty());
        assertEquals(Digest.of("x".repeat(5000).getBytes(StandardCharsets.US_ASCII)), tree.digest("a"));
    }
}
