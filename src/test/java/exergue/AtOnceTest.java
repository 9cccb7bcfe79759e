package exergue;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.bench.MakeCatalogue;
import exergue.files.FolderTree;
import exergue.files.MemoryTree;
import exergue.files.Tree;
import exergue.files.TreeOver;
import exergue.source.Loaded;
import exergue.source.SourceReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** However many files are read at once, what comes of them is what comes of them one by one. */
class AtOnceTest {

    private static final int COINS = 240;

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 8})
    void readersChangeNeitherValuesNorFindings(int readers) throws Exception {
        Tree tree = MemoryTree.ofText(everyThirdIsWrong());
        Loaded alone = with(1, () -> SourceReader.read(tree));
        Loaded together = with(readers, () -> SourceReader.read(tree));
        assertTrue(alone.findings().all().size() >= COINS / 3, () -> alone.findings().all().toString());
        assertEquals(alone.findings().all(), together.findings().all());
        assertEquals(COINS, alone.catalogue().orElseThrow().coins().size());
        assertEquals(alone.catalogue(), together.catalogue());
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 8})
    void readersChangeNoByteOfTheBook(int readers) throws Exception {
        Tree tree = MemoryTree.ofText(MakeCatalogue.files(COINS));
        assertArrayEquals(with(1, () -> book(tree)), with(readers, () -> book(tree)));
    }

    /** What the page engine keeps for the whole process is not changed by a book that is set beside another. */
    @Test
    void booksThatAreSetAtTheSameTimeAreTheSameToTheByte() throws Exception {
        Tree one = MemoryTree.ofText(MakeCatalogue.files(COINS));
        Tree other = new FolderTree(Path.of("src", "main", "resources", "exergue", "start"));
        byte[] oneAlone = book(one);
        byte[] otherAlone = book(other);
        ForkJoinPool pool = new ForkJoinPool(3);
        try {
            List<ForkJoinTask<byte[]>> books = List.of(pool.submit(() -> book(one)), pool.submit(() -> book(other)), pool.submit(() -> book(one)));
            assertArrayEquals(oneAlone, books.get(0).get());
            assertArrayEquals(otherAlone, books.get(1).get());
            assertArrayEquals(oneAlone, books.get(2).get());
        } finally {
            pool.shutdown();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 8})
    void aDiskThatFailsIsToldAsSuch(int readers) {
        Tree failing = new Failing(MemoryTree.ofText(MakeCatalogue.files(COINS)), "coins/t0003/c00017.yaml");
        ExecutionException failure = assertThrows(ExecutionException.class, () -> with(readers, () -> SourceReader.read(failing)));
        assertTrue(Failing.says(failure), failure::toString);
    }

    /** The files are read once more for the book's identifier, on another thread. */
    @Test
    void aDiskThatFailsWhileThePagesAreSetIsToldAsSuch() throws IOException {
        Tree sound = MemoryTree.ofText(MakeCatalogue.files(5));
        Exergue.Checked checked = Exergue.check(sound, Progress.SILENT);
        Exergue.Checked lost = new Exergue.Checked(new Failing(sound, "catalogue.yaml"), checked.catalogue(), checked.book(),
                checked.works(), checked.findings(), checked.pictures());
        Exception failure = assertThrows(java.io.UncheckedIOException.class,
                () -> Exergue.typeset(lost, new ByteArrayOutputStream(), Progress.SILENT));
        assertTrue(Failing.says(failure), failure::toString);
    }

    private static Map<String, String> everyThirdIsWrong() {
        Map<String, String> files = MakeCatalogue.files(COINS);
        files.replaceAll((file, text) -> file.matches("coins/.*c\\d+[0369]\\.yaml")
                ? text.replace(" g, diameter", " gg, diameter").replace("dies:", "dyes:") : text);
        return files;
    }

    /** Streams that are shared out are shared out in the pool that they are called from. */
    private static <T> T with(int readers, Callable<T> work) throws Exception {
        ForkJoinPool pool = new ForkJoinPool(readers);
        try {
            return pool.submit(work).get();
        } finally {
            pool.shutdown();
        }
    }

    private static byte[] book(Tree tree) throws IOException {
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        Exergue.Made made = Exergue.typeset(Exergue.check(tree, Progress.SILENT), pdf, Progress.SILENT);
        assertTrue(made.publication().isPresent(), () -> made.findings().all().toString());
        return pdf.toByteArray();
    }

    /** A tree one of whose files can no longer be read. */
    private static final class Failing extends TreeOver {

        private static final String MESSAGE = "the disk is gone";

        private final String lost;

        Failing(Tree whole, String lost) {
            super(whole);
            this.lost = lost;
        }

        static boolean says(Throwable failure) {
            return failure instanceof IOException && MESSAGE.equals(failure.getMessage())
                    || failure.getCause() != null && says(failure.getCause());
        }

        @Override
        protected Tree holding(String path) throws IOException {
            if (path.equals(lost)) {
                throw new IOException(MESSAGE);
            }
            return super.holding(path);
        }
    }
}
