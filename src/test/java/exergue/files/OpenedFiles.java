package exergue.files;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A tree that notes whenever one of its files is opened. */
public final class OpenedFiles extends TreeOver {

    private final List<String> opened = Collections.synchronizedList(new ArrayList<>());

    public OpenedFiles(Tree tree) {
        super(tree);
    }

    /** In order, each as often as it was opened; its first bytes alone do not count where its digest was made. */
    public List<String> opened() {
        return List.copyOf(opened);
    }

    @Override
    public byte[] read(String path) throws IOException {
        opened.add(path);
        return super.read(path);
    }

    @Override
    public byte[] start(String path, int length) throws IOException {
        if (!opened.contains(path)) {
            opened.add(path);
        }
        return super.start(path, length);
    }

    @Override
    public String digest(String path) throws IOException {
        opened.add(path);
        return super.digest(path);
    }
}
