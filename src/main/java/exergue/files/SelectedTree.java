package exergue.files;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.function.Predicate;

/** A tree of which only some files are seen. */
public final class SelectedTree extends TreeOver {

    private final Predicate<String> wanted;

    /** @param wanted says of a path whether it is seen */
    public SelectedTree(Tree whole, Predicate<String> wanted) {
        super(whole);
        this.wanted = wanted;
    }

    @Override
    protected Tree holding(String path) throws IOException {
        if (!wanted.test(path)) {
            throw new NoSuchFileException(path);
        }
        return super.holding(path);
    }

    @Override
    public List<String> files() throws IOException {
        return super.files().stream().filter(wanted).toList();
    }

    @Override
    public boolean has(String path) {
        return wanted.test(path) && super.has(path);
    }
}
