package exergue.files;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;

/** A tree with the files of another laid over it: what both have is taken from the upper. */
public final class OverlaidTree extends TreeOver {

    private final Tree above;

    public OverlaidTree(Tree below, Tree above) {
        super(below);
        this.above = above;
    }

    @Override
    protected Tree holding(String path) throws IOException {
        return above.has(path) ? above : super.holding(path);
    }

    @Override
    public List<String> files() throws IOException {
        return Stream.concat(super.files().stream(), above.files().stream()).distinct().sorted().toList();
    }

    @Override
    public boolean has(String path) {
        return above.has(path) || super.has(path);
    }
}
