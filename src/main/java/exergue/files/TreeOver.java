package exergue.files;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** A tree over another: whatever a class does not say otherwise is as the tree below has it. */
public abstract class TreeOver implements Tree {

    private final Tree below;

    protected TreeOver(Tree below) {
        this.below = below;
    }

    /**
     * The tree that has the file.
     *
     * @throws IOException if there is no such file here
     */
    protected Tree holding(String path) throws IOException {
        return below;
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
        return holding(path).read(path);
    }

    @Override
    public Optional<byte[]> readUpTo(String path, long most) throws IOException {
        return holding(path).readUpTo(path, most);
    }

    @Override
    public byte[] start(String path, int length) throws IOException {
        return holding(path).start(path, length);
    }

    @Override
    public long size(String path) throws IOException {
        return holding(path).size(path);
    }

    @Override
    public String digest(String path) throws IOException {
        return holding(path).digest(path);
    }

    @Override
    public Optional<String> witness(String path) throws IOException {
        return holding(path).witness(path);
    }
}
