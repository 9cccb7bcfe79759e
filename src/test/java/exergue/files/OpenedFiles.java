package exergue.files;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** A tree that notes whenever one of its files is opened. */
public final class OpenedFiles implements Tree {

    private final Tree tree;
    private final List<String> opened = Collections.synchronizedList(new ArrayList<>());

    public OpenedFiles(Tree tree) {
        this.tree = tree;
    }

    /** In order, each as often as it was opened; its first bytes alone do not count where its digest was made. */
    public List<String> opened() {
        return List.copyOf(opened);
    }

    @Override
    public List<String> files() throws IOException {
        return tree.files();
    }

    @Override
    public boolean has(String path) {
        return tree.has(path);
    }

    @Override
    public byte[] read(String path) throws IOException {
        opened.add(path);
        return tree.read(path);
    }

    @Override
    public byte[] start(String path, int length) throws IOException {
        if (!opened.contains(path)) {
            opened.add(path);
        }
        return tree.start(path, length);
    }

    @Override
    public long size(String path) throws IOException {
        return tree.size(path);
    }

    @Override
    public String digest(String path) throws IOException {
        opened.add(path);
        return tree.digest(path);
    }

    @Override
    public Optional<String> witness(String path) throws IOException {
        return tree.witness(path);
    }
}
