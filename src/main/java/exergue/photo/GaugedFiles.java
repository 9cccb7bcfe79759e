package exergue.photo;

import exergue.files.Tree;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicInteger;

/** Many files of pictures gauged at once, on every processor there is; the answer does not depend on how many. */
public final class GaugedFiles {

    private static final int OFTEN = 25;

    private GaugedFiles() { }

    /** Is told now and then how many of how many are done; not always by the same thread, but never by two at once. */
    @FunctionalInterface
    public interface Reached {
        void reached(int done, int of);
    }

    /**
     * By path; a file that is not there is left out.
     *
     * @throws IOException if the disk fails
     */
    public static Map<String, Gauged> of(Tree tree, List<String> paths, Reached progress) throws IOException {
        Map<String, Gauged> gauged = new ConcurrentSkipListMap<>();
        AtomicInteger done = new AtomicInteger();
        try {
            paths.parallelStream().filter(tree::has).forEach(path -> {
                gauged.put(path, of(tree, path));
                synchronized (done) {
                    if (done.incrementAndGet() % OFTEN == 0 || done.get() == paths.size()) {
                        progress.reached(done.get(), paths.size());
                    }
                }
            });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        return Collections.unmodifiableMap(new TreeMap<>(gauged));
    }

    private static Gauged of(Tree tree, String path) {
        try {
            if (tree.size(path) > Limits.USUAL.bytes()) {
                return new Gauged.NotRead(ReadPicture.Reason.TOO_LARGE, "it has " + (tree.size(path) >> 20) + " MB, and no more than "
                        + (Limits.USUAL.bytes() >> 20) + " are read");
            }
            return Gauged.of(tree.read(path), Limits.USUAL);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
