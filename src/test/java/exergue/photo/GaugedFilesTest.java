package exergue.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.Cache;
import exergue.files.FolderCache;
import exergue.files.FolderTree;
import exergue.files.MemoryCache;
import exergue.files.OpenedFiles;
import exergue.files.WitnessedTree;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Measured once, and what was measured is the same from the cache. */
class GaugedFilesTest {

    private static final Instant CHANGED = Instant.parse("2020-05-01T12:00:00Z");
    private static final Instant OPENED = Instant.parse("2020-06-01T12:00:00Z");

    @TempDir
    private Path folder;
    private List<String> paths;

    /** Photographs of the demonstration, and what is no photograph of a coin or none at all. */
    @BeforeEach
    void layOut() throws IOException {
        Path photographs = Files.createDirectory(folder.resolve("photographs"));
        for (Path file : List.of(Path.of("catalogue-src/photographs/ark-022-obv.jpg"), Path.of("catalogue-src/photographs/ark-022-rev.jpg"),
                Path.of("src/test/resources/photo/plain.tif"), Path.of("src/test/resources/photo/bomb.png"),
                Path.of("src/test/resources/photo/cut-off.jpg"))) {
            Files.setLastModifiedTime(Files.copy(file, photographs.resolve(file.getFileName())), FileTime.from(CHANGED));
        }
        try (Stream<Path> files = Files.list(photographs)) {
            paths = files.map(file -> "photographs/" + file.getFileName()).sorted().toList();
        }
    }

    private Map<String, Gauged> gauged(OpenedFiles files, Cache cache) throws IOException {
        return new GaugedFiles(new WitnessedTree(files, cache), cache, new Workroom(0)).all(paths, (done, of) -> { });
    }

    private OpenedFiles run() throws IOException {
        return new OpenedFiles(new FolderTree(folder, OPENED));
    }

    @Test
    void theSecondTimeNothingIsOpenedAndTheSameIsMeasured() throws IOException {
        Cache cache = new FolderCache(folder.resolve(".cache"));
        Map<String, Gauged> first = gauged(run(), cache);
        OpenedFiles again = run();
        assertEquals(first, gauged(again, cache));
        assertEquals(List.of(), again.opened().stream().filter(path -> !path.endsWith("plain.tif") && !path.contains("bomb")
                && !path.contains("cut-off")).toList()); // these three have fewer than 4,096 bytes, which are read
        assertEquals(first, gauged(run(), new MemoryCache()));
        assertInstanceOf(Outlined.Found.class, ((Gauged.Measured) first.get("photographs/ark-022-obv.jpg")).outlined());
        assertInstanceOf(Outlined.Refused.class, ((Gauged.Measured) first.get("photographs/plain.tif")).outlined());
        assertInstanceOf(Gauged.NotRead.class, first.get("photographs/bomb.png"));
    }

    /** To within what a figure of single precision at 1,000 pixels can hold, 2^-14. */
    @Test
    void whatIsKeptIsWhatWasMeasured() throws IOException {
        Gauged.Measured exact = (Gauged.Measured) Gauged.of(Files.readAllBytes(folder.resolve(paths.get(0))), Limits.USUAL);
        Gauged.Measured kept = (Gauged.Measured) GaugedFile.read(GaugedFile.bytes(exact)).orElseThrow();
        Outlined.Found before = (Outlined.Found) exact.outlined();
        Outlined.Found after = (Outlined.Found) kept.outlined();
        assertEquals(before.confidence(), after.confidence());
        assertEquals(before.background(), after.background());
        assertEquals(before.outlines().size(), after.outlines().size());
        assertEquals(before.outlines().get(0).greatest().length(), after.outlines().get(0).greatest().length(), 1e-4);
        assertEquals(new Gauged.Measured(exact.width(), exact.height(), exact.kind(), exact.ppi(), after, exact.bar()), kept);
    }

    @Test
    void aScaleBarIsKeptToo() {
        ScaleBarRead bar = new ScaleBarRead.Read(23.5, 30, 0.01, 90, new Point(1, 2), new Point(3, 4));
        Gauged measured = new Gauged.Measured(600, 400, new ReadPicture.Kind(ReadPicture.Format.TIFF, ReadPicture.Colours.GREY, 16),
                java.util.OptionalDouble.of(600), new Outlined.Refused(Outlined.Reason.NO_CONTRAST), bar);
        assertEquals(measured, GaugedFile.read(GaugedFile.bytes(measured)).orElseThrow());
    }

    @Test
    void bytesOfSomethingElseAreForgotten() {
        assertTrue(GaugedFile.read(new byte[0]).isEmpty());
        assertTrue(GaugedFile.read(new byte[] {1, 0, 0, 7}).isEmpty());
        assertTrue(GaugedFile.read("\0\0\3abc".getBytes(java.nio.charset.StandardCharsets.ISO_8859_1)).isEmpty());
    }
}
