package exergue.photo.print;

import exergue.files.Cache;
import exergue.files.Tree;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A source tree with the pictures that were made out of its photographs. What the cache has forgotten is made again. */
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
    public List<String> files() throws IOException {
        List<String> files = new ArrayList<>(source.files());
        files.addAll(made.keySet());
        Collections.sort(files);
        return List.copyOf(files);
    }

    @Override
    public boolean has(String path) {
        return made.containsKey(path) || source.has(path);
    }

    @Override
    public byte[] read(String path) throws IOException {
        Cut cut = made.get(path);
        if (cut == null) {
            return source.read(path);
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
        return made.containsKey(path) ? read(path).length : source.size(path);
    }

    @Override
    public byte[] start(String path, int length) throws IOException {
        return made.containsKey(path) ? Tree.super.start(path, length) : source.start(path, length);
    }

    @Override
    public String digest(String path) throws IOException {
        return made.containsKey(path) ? Tree.super.digest(path) : source.digest(path);
    }

    @Override
    public Optional<String> witness(String path) throws IOException {
        return made.containsKey(path) ? Optional.empty() : source.witness(path);
    }
}
