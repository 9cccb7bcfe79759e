package exergue.files;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A tree some of whose files have been written anew, in memory. */
public final class OverlaidTree implements Tree {

    private final Tree below;
    private final Map<String, byte[]> above;

    /** @param above the new files; each is there below too */
    public OverlaidTree(Tree below, Map<String, byte[]> above) {
        this.below = below;
        this.above = new TreeMap<>(above);
    }

    @Override
    public List<String> files() throws IOException {
        return below.files();
    }

    @Override
    public boolean has(String path) {
        return below.has(path);
    }

    @Override
    public byte[] read(String path) throws IOException {
        byte[] bytes = above.get(path);
        return bytes == null ? below.read(path) : bytes.clone();
    }

    @Override
    public byte[] start(String path, int length) throws IOException {
        return above.containsKey(path) ? Tree.super.start(path, length) : below.start(path, length);
    }

    @Override
    public long size(String path) throws IOException {
        byte[] bytes = above.get(path);
        return bytes == null ? below.size(path) : bytes.length;
    }

    @Override
    public String digest(String path) throws IOException {
        return above.containsKey(path) ? Tree.super.digest(path) : below.digest(path);
    }

    @Override
    public Optional<String> witness(String path) throws IOException {
        return above.containsKey(path) ? Optional.empty() : below.witness(path);
    }
}
