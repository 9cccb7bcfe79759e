package exergue;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import exergue.files.Cache;
import exergue.files.FolderCache;
import exergue.files.FolderTree;
import exergue.files.OpenedFiles;
import exergue.files.Tree;
import exergue.files.WitnessedTree;
import exergue.photo.Workroom;
import exergue.photo.print.Darkroom;
import exergue.photo.print.PaintedCoin;
import exergue.photo.print.PicturedCatalogue;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book that is made again: no photograph is opened that has not changed, whoever asks for it, and the book is the same. */
class SameAgainTest {

    private static final Instant CHANGED = Instant.parse("2020-05-01T12:00:00Z");
    private static final Instant OPENED = Instant.parse("2020-06-01T12:00:00Z");

    @TempDir
    private Path folder;
    private Path source;

    @BeforeEach
    void layOut() throws IOException {
        source = folder.resolve("source");
        Tree tree = new PicturedCatalogue().file("photographs/o.jpg", photograph(150))
                .file("photographs/r.jpg", photograph(148)).file("photographs/not-named.jpg", photograph(120))
                .coin("lk-1", "18 mm", "obverse: photographs/o.jpg\nreverse: photographs/r.jpg").tree();
        for (String path : tree.files()) {
            write(path, tree.read(path), CHANGED);
        }
    }

    private static byte[] photograph(int diameter) {
        return new PaintedCoin(220, 210, new Color(235, 235, 232))
                .coin(PaintedCoin.ellipse(110, 105, diameter, 145, 20)).jpeg();
    }

    private void write(String path, byte[] bytes, Instant changed) throws IOException {
        Path file = source.resolve(path);
        Files.createDirectories(file.getParent());
        Files.setLastModifiedTime(Files.write(file, bytes), FileTime.from(changed));
    }

    /** @param opened photographs of the source that were opened for the book */
    private record Run(TreeSet<String> opened, byte[] pdf) { }

    private Run run() throws IOException {
        OpenedFiles files = new OpenedFiles(new FolderTree(source, OPENED));
        Cache cache = new FolderCache(folder.resolve("cache"));
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        Exergue.Checked checked = Exergue.check(new WitnessedTree(files, cache), Progress.SILENT);
        Exergue.Made made = Exergue.typeset(Exergue.pictures(checked, Darkroom.with(cache, 2, new Workroom(200 << 20)), Progress.SILENT), pdf, Progress.SILENT);
        assertFalse(made.findings().hasErrors(), made.findings().all().toString());
        TreeSet<String> opened = new TreeSet<>(files.opened());
        opened.removeIf(path -> !path.startsWith("photographs/"));
        return new Run(opened, pdf.toByteArray());
    }

    @Test
    void theSecondTimeNoPhotographIsOpened() throws IOException {
        Run first = run();
        assertEquals(List.of("photographs/not-named.jpg", "photographs/o.jpg", "photographs/r.jpg"), List.copyOf(first.opened()));
        Run second = run();
        assertEquals(List.of(), List.copyOf(second.opened()));
        assertArrayEquals(first.pdf(), second.pdf());
    }

    @Test
    void aPhotographThatWasChangedIsOpenedThoughItHasTheSameSize() throws IOException {
        run();
        byte[] other = photograph(150);
        other[15] ^= 1; // of the pixels to the inch (JFIF 1.02)
        write("photographs/o.jpg", other, CHANGED.plusSeconds(1));
        Run second = run();
        assertEquals(List.of("photographs/o.jpg"), List.copyOf(second.opened()));
    }

    /** What identifies the book comes from what is in the files, not from how that is known. */
    @Test
    void theBookIsTheSameWithAnotherTimeOnItsPhotographs() throws IOException {
        Run first = run();
        write("photographs/o.jpg", photograph(150), CHANGED.plusSeconds(7));
        assertArrayEquals(first.pdf(), run().pdf());
    }
}
