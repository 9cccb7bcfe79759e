package exergue.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;

/**
 * A cache in a folder, for this run and the next. The folder can be deleted at any time. Every file is written beside its
 * place and moved there, so that several programs can share the folder; before its bytes it has their digest, and one that
 * does not agree with it is taken for forgotten.
 */
public final class FolderCache implements Cache {

    private static final int DIGEST = 32;
    private static final int FAN = 2;

    /** Of all caches of this program, since two may share a folder. */
    private static final AtomicLong WRITTEN = new AtomicLong();

    private final Path folder;

    /** The folder is made when there is something to keep. */
    public FolderCache(Path folder) {
        this.folder = folder;
    }

    @Override
    public Optional<byte[]> get(String name) {
        try {
            byte[] file = Files.readAllBytes(place(name));
            byte[] bytes = file.length < DIGEST ? new byte[0] : Arrays.copyOfRange(file, DIGEST, file.length);
            boolean whole = file.length >= DIGEST && Arrays.equals(Arrays.copyOf(file, DIGEST), Digest.sha256().digest(bytes));
            return whole ? Optional.of(bytes) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    @Override
    public void put(String name, byte[] bytes) {
        Path place = place(name);
        Path beside = place.resolveSibling("." + name + "." + ProcessHandle.current().pid() + "-" + WRITTEN.incrementAndGet());
        try {
            Files.createDirectories(place.getParent());
            Files.write(beside, ByteBuffer.allocate(DIGEST + bytes.length).put(Digest.sha256().digest(bytes)).put(bytes).array());
            Files.move(beside, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            forget(beside);
        }
    }

    /** Names of one beginning lie together, so that no folder holds too many files. */
    private Path place(String name) {
        if (!name.matches("[a-z0-9-]{3,100}")) {
            throw new IllegalArgumentException(name);
        }
        return folder.resolve(name.substring(0, FAN)).resolve(name);
    }

    private static void forget(Path beside) {
        try {
            Files.deleteIfExists(beside);
        } catch (IOException e) {
            // it stays beside its place, where nobody looks for it
            return;
        }
    }
}
