package exergue.photo.print;

import exergue.files.Cache;
import exergue.files.Tree;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The pictures that were made out of the photographs of a source. What the cache has forgotten is made again. */
final class PictureTree implements Tree {

    private final Tree source;
    private final Map<String, Cut> made;
    private final Cache cache;
    private final Opener opener;

    /** @param made by the paths that the pictures have */
    PictureTree(Tree source, Map<String, Cut> made, Cache cache, Opener opener) {
        this.source = source;
        this.made = new TreeMap<>(made);
        this.cache = cache;
        this.opener = opener;
    }

    @Override
    public List<String> files() {
        return List.copyOf(made.keySet());
    }

    @Override
    public boolean has(String path) {
        return made.containsKey(path);
    }

    @Override
    public byte[] read(String path) throws IOException {
        Cut cut = made.get(path);
        if (cut == null) {
            throw new FileNotFoundException(path);
        }
        Optional<byte[]> kept = cache.get(cut.name());
        if (kept.isPresent()) {
            return kept.get();
        }
        Negative negative = new Negative(cut.source(), source, cache, opener);
        try {
            return negative.print(cut);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        } finally {
            negative.putAway();
        }
    }

    @Override
    public long size(String path) throws IOException {
        return read(path).length;
    }
}
