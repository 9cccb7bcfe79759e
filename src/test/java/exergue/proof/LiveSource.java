package exergue.proof;

import exergue.bench.MakeCatalogue;
import exergue.photo.print.Darkroom;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.function.Predicate;

/** A folder somebody writes in, and the desk that looks at it. */
final class LiveSource implements AutoCloseable {

    private static final Duration PATIENCE = Duration.ofSeconds(90);

    private final Path folder;
    private final ProofDesk desk;

    LiveSource(Path folder, int coins) throws IOException {
        this(folder, coins, Darkroom.inMemory());
    }

    LiveSource(Path folder, int coins, Darkroom darkroom) throws IOException {
        this.folder = folder;
        for (Map.Entry<String, String> file : MakeCatalogue.files(coins).entrySet()) {
            write(file.getKey(), file.getValue());
        }
        this.desk = new ProofDesk(folder, Instant::now, tree -> tree, darkroom);
    }

    LiveSource open() {
        desk.open();
        return this;
    }

    ProofDesk desk() {
        return desk;
    }

    String read(String file) throws IOException {
        return Files.readString(folder.resolve(file));
    }

    /** As an editor does that writes beside and moves. */
    void write(String file, String text) {
        try {
            Path to = folder.resolve(file);
            Files.createDirectories(to.getParent());
            Path beside = to.resolveSibling("." + to.getFileName() + ".part");
            Files.writeString(beside, text);
            Files.move(beside, to, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void delete(String file) throws IOException {
        Files.delete(folder.resolve(file));
    }

    /** The first proof of which this is true; fails if there is none for long. */
    Proof await(Predicate<Proof> wanted) throws InterruptedException {
        Instant end = Instant.now().plus(PATIENCE);
        Proof proof = desk.table().now();
        while (!wanted.test(proof)) {
            if (Instant.now().isAfter(end)) {
                throw new AssertionError("It has come to nothing else than " + proof.state() + ", " + proof.findings().all() + proof.trouble());
            }
            proof = desk.table().after(proof.number(), 500);
        }
        return proof;
    }

    Proof awaitSaved() throws InterruptedException {
        return await(proof -> proof.state() == Proof.State.AS_SAVED);
    }

    @Override
    public void close() throws IOException {
        desk.close();
    }
}
