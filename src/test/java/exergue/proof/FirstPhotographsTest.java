package exergue.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.MemoryCache;
import exergue.finding.Severity;
import exergue.photo.Limits;
import exergue.photo.PictureReader;
import exergue.photo.ReadPicture;
import exergue.photo.Workroom;
import exergue.photo.print.Darkroom;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first time, photographs may take many minutes; nobody who writes has to wait for them to hear what is wrong. */
class FirstPhotographsTest {

    private static final String COIN = "coins/t0001/c00008.yaml";

    @TempDir
    private Path folder;
    private final CountDownLatch opened = new CountDownLatch(1);
    private final CountDownLatch mayGoOn = new CountDownLatch(1);

    private ReadPicture slowly(byte[] bytes) {
        opened.countDown();
        try {
            mayGoOn.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return PictureReader.read(bytes, Limits.USUAL);
    }

    @Test
    void findingsAreToldWhilePhotographsAreMadeReady() throws Exception {
        Darkroom darkroom = new Darkroom(new MemoryCache(), 1, new Workroom(0), this::slowly);
        try (LiveSource source = new LiveSource(folder, 10, darkroom)) {
            Files.createDirectories(folder.resolve("photographs"));
            Files.copy(Path.of("catalogue-src/photographs/ark-001-obv.jpg"), folder.resolve("photographs/obv.jpg"));
            String sound = source.read(COIN) + "photograph: {obverse: photographs/obv.jpg, width: 25.4 mm, credit: drawn, permission: not needed}\n";
            source.write(COIN, sound);
            source.open();
            opened.await();
            source.write(COIN, sound.replace("type: t0001", "type: t0009"));
            Proof broken = source.await(proof -> proof.findings().count(Severity.ERROR) == 1);
            assertEquals(COIN, broken.findings().all().get(0).place().file());
            assertTrue(broken.leaves().isEmpty());
            source.write(COIN, sound);
            source.await(proof -> proof.findings().count(Severity.ERROR) == 0);
            mayGoOn.countDown();
            assertTrue(source.awaitSaved().firstLeaves().containsKey("c00008"));
        }
    }
}
