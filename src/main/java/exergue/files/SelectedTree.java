package exergue.files;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** A tree of which only some files are seen. */
public final class SelectedTree implements Tree {

    private final Tree whole;
    private final Predicate<String> wanted;

    /** @param wanted says of a path whether it is seen */
    public SelectedTree(Tree whole, Predicate<String> wanted) {
        this.whole = whole;
        this.wanted = wanted;
    }

    @Override
    public List<String> files() throws IOException {
        return whole.files().stream().filter(wanted).toList();
    }

    @Override
    public boolean has(String path) {
        return wanted.test(path) && whole.has(path);
    }

    @Override
    public byte[] read(String path) throws IOException {
        return whole.read(seen(path));
    }

    @Override
    public Optional<byte[]> readUpTo(String path, long most) throws IOException {
        return whole.readUpTo(seen(path), most);
    }

    @Override
    public byte[] start(String path, int length) throws IOException {
        return whole.start(seen(path), length);
    }

    @Override
    public long size(String path) throws IOException {
        return whole.size(seen(path));
    }

    @Override
    public String digest(String path) throws IOException {
        return whole.digest(seen(path));
    }

    @Override
    public Optional<String> witness(String path) throws IOException {
        return whole.witness(seen(path));
    }

    private String seen(String path) throws NoSuchFileException {
        if (!wanted.test(path)) {
            throw new NoSuchFileException(path);
        }
        return path;
    }
}
