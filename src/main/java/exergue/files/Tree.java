package exergue.files;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A source tree that can be read: a folder, a map in memory, later a revision in Git. Paths are relative,
 * with forward slashes and without {@code .} or {@code ..}; nothing outside the tree can be named. Several files may be
 * read at once.
 */
public interface Tree {

    /** Every file of the tree, sorted by path. Hidden files and folders (leading dot) are left out. */
    List<String> files() throws IOException;

    boolean has(String path);

    /**
     * @throws IOException if the file cannot be read, or the path leads out of the tree (also by a link)
     */
    byte[] read(String path) throws IOException;

    /**
     * The whole file, or nothing if it has more bytes than {@code most}; it is not read then.
     *
     * @throws IOException as for {@link #read}
     */
    default Optional<byte[]> readUpTo(String path, long most) throws IOException {
        return size(path) > most ? Optional.empty() : Optional.of(read(path));
    }

    /**
     * The first bytes of a file, as many as there are up to {@code length}.
     *
     * @throws IOException as for {@link #read}
     */
    default byte[] start(String path, int length) throws IOException {
        byte[] whole = read(path);
        return Arrays.copyOf(whole, Math.min(length, whole.length));
    }

    /** Size in bytes, so that a reader can refuse a huge file before reading it. */
    long size(String path) throws IOException;

    /**
     * The {@link Digest} of the whole file.
     *
     * @throws IOException as for {@link #read}
     */
    default String digest(String path) throws IOException {
        return Digest.of(read(path));
    }

    /**
     * What tells without opening it whether a file is still the one it was: as long as this text is the same, so is the
     * file. Empty where nothing tells it.
     *
     * @throws IOException as for {@link #read}
     */
    default Optional<String> witness(String path) throws IOException {
        return Optional.empty();
    }
}
