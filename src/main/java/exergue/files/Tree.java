package exergue.files;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;

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
}
