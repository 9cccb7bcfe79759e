package exergue.photo;

import exergue.files.Cache;
import exergue.files.Digest;
import exergue.files.Tree;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Files of pictures gauged, many at once on every processor there is; the answer does not depend on how many. What was
 * measured stays in a cache by the content of the file, so that only new photographs are opened.
 */
public final class GaugedFiles {

    private static final int OFTEN = 25;

    private final Tree tree;
    private final Cache cache;
    private final Workroom room;

    public GaugedFiles(Tree tree, Cache cache, Workroom room) {
        this.tree = tree;
        this.cache = cache;
        this.room = room;
    }

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
    public Map<String, Gauged> all(List<String> paths, Reached progress) throws IOException {
        Map<String, Gauged> gauged = new ConcurrentSkipListMap<>();
        AtomicInteger done = new AtomicInteger();
        try {
            paths.parallelStream().filter(tree::has).forEach(path -> {
                gauged.put(path, ofTree(path));
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

    private Gauged ofTree(String path) {
        try {
            return one(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @throws IOException if the file is not there or cannot be read from the disk */
    public Gauged one(String path) throws IOException {
        if (tree.size(path) > Limits.USUAL.bytes()) {
            ReadPicture.Unreadable unread = PictureReader.tooLong(tree.size(path), Limits.USUAL);
            return new Gauged.NotRead(unread.reason(), unread.words());
        }
        String name = Fingerprint.of("gauged", tree.digest(path), "");
        Optional<Gauged> kept = cache.get(name).flatMap(GaugedFile::read);
        if (kept.isPresent()) {
            return kept.get();
        }
        byte[] gauged = measured(path);
        return GaugedFile.read(gauged).orElseThrow(); // as rounded as from the cache, so that both give the same
    }

    private byte[] measured(String path) throws IOException {
        try (Workroom.Share ofFile = room.forFile(tree.size(path))) {
            byte[] bytes = tree.read(path);
            try (Workroom.Share ofPicture = room.forPicture(PictureReader.memory(bytes, Limits.USUAL))) {
                byte[] gauged = GaugedFile.bytes(Gauged.of(bytes, Limits.USUAL));
                cache.put(Fingerprint.of("gauged", Digest.of(bytes), ""), gauged);
                return gauged;
            }
        }
    }
}
