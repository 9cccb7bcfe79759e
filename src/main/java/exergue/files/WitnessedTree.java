package exergue.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A tree that remembers from one run to the next what the digests of its larger files were, so that a photograph that is
 * still the same need not be opened to see that it is. A file counts as the same while its {@link Tree#witness witness}
 * does. What is remembered lies in a cache; without it everything is read once more, and the same comes out.
 */
public final class WitnessedTree extends TreeOver {

    /** Smaller files are read as soon as looked up. */
    private static final int SMALL = 4096;
    /** Enough to tell one kind of picture from another. */
    private static final int HEAD = 16;
    private static final int DIGEST = 64;

    private final Cache cache;
    private final Map<String, Known> known = new ConcurrentHashMap<>();

    public WitnessedTree(Tree tree, Cache cache) {
        super(tree);
        this.cache = cache;
    }

    /** @param head the first bytes of the file */
    private record Known(String digest, byte[] head) {

        static Optional<Known> read(byte[] bytes) {
            return bytes.length != DIGEST + HEAD ? Optional.empty()
                    : Optional.of(new Known(new String(bytes, 0, DIGEST, StandardCharsets.US_ASCII),
                            Arrays.copyOfRange(bytes, DIGEST, bytes.length)));
        }

        byte[] bytes() {
            byte[] bytes = Arrays.copyOf(digest.getBytes(StandardCharsets.US_ASCII), DIGEST + HEAD);
            System.arraycopy(head, 0, bytes, DIGEST, HEAD);
            return bytes;
        }
    }

    /** What this run or an earlier one has found out; empty for a small file and for one that may have changed. */
    private Optional<Known> known(String path) throws IOException {
        if (!known.containsKey(path) && size(path) >= SMALL) {
            witness(path).flatMap(witness -> cache.get(name(witness))).flatMap(Known::read)
                    .ifPresent(found -> known.put(path, found));
        }
        return Optional.ofNullable(known.get(path));
    }

    private static String name(String witness) {
        return Digest.of(("witness " + witness).getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public String digest(String path) throws IOException {
        Optional<Known> before = known(path);
        if (before.isPresent()) {
            return before.get().digest();
        }
        if (size(path) < SMALL) {
            return super.digest(path);
        }
        Optional<String> witness = witness(path); // asked first, so that a change meanwhile has another one
        Known now = new Known(super.digest(path), Arrays.copyOf(super.start(path, HEAD), HEAD));
        witness.ifPresent(of -> cache.put(name(of), now.bytes()));
        known.put(path, now);
        return now.digest();
    }

    @Override
    public byte[] start(String path, int length) throws IOException {
        Optional<Known> before = length <= HEAD ? known(path) : Optional.empty();
        return before.isPresent() ? Arrays.copyOf(before.get().head(), length) : super.start(path, length);
    }
}
