package exergue.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every way in which a repository says where it is. */
class GitCommitTest {

    private static final String HASH = "0123456789abcdef0123456789abcdef01234567";
    private static final String OTHER = "f".repeat(40);

    @TempDir
    private Path work;
    private Path source;

    @BeforeEach
    void layOut() throws IOException {
        source = Files.createDirectories(work.resolve("books").resolve("lakeia"));
    }

    private void write(String path, String text) throws IOException {
        Path file = work.resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    @Test
    void aFolderInNoRepositoryHasNone() {
        assertEquals(Optional.empty(), GitCommit.of(source));
        assertEquals(Optional.empty(), GitCommit.of(work.resolve("not-there")));
    }

    @Test
    void theBranchHasAFileOfItsOwn() throws IOException {
        write(".git/HEAD", "ref: refs/heads/main\n");
        assertEquals(Optional.empty(), GitCommit.of(source), "no commit yet");
        write(".git/refs/heads/main", HASH + "\n");
        write(".git/packed-refs", OTHER + " refs/heads/main\n");
        assertEquals(Optional.of(HASH), GitCommit.of(source));
    }

    @Test
    void theBranchIsPacked() throws IOException {
        write(".git/HEAD", "ref: refs/heads/second-edition\n");
        write(".git/packed-refs", "# pack-refs with: peeled fully-peeled sorted\n" + OTHER + " refs/heads/edition\n"
                + HASH + " refs/heads/second-edition\n^" + OTHER + "\n");
        assertEquals(Optional.of(HASH), GitCommit.of(source));
    }

    @Test
    void headIsAtNoBranch() throws IOException {
        write(".git/HEAD", HASH + "\n");
        assertEquals(Optional.of(HASH), GitCommit.of(source));
    }

    @Test
    void aLinkedWorkTreeNamesItsRepository() throws IOException {
        write("store/worktrees/lakeia/HEAD", "ref: refs/heads/main\n");
        write("store/worktrees/lakeia/commondir", "../..\n");
        write("store/refs/heads/main", HASH + "\n");
        write("books/lakeia/.git", "gitdir: ../../store/worktrees/lakeia\n");
        assertEquals(Optional.of(HASH), GitCommit.of(source));
    }

    @Test
    void whatMakesNoSenseTellsNothing() throws IOException {
        write(".git/HEAD", "ref: ../../../secret\n");
        assertEquals(Optional.empty(), GitCommit.of(source));
        write(".git/HEAD", "main\n");
        assertEquals(Optional.empty(), GitCommit.of(source));
        write(".git/HEAD", "ref: refs/heads/ma\u0000in\n");
        assertEquals(Optional.empty(), GitCommit.of(source));
    }
}
