package exergue.review.git;

import exergue.files.Tree;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.jgit.lib.ObjectId;

/** A folder as it was at one commit. Links and submodules are not files of it. Usable while its {@link Revisions} is open. */
public final class RevisionTree implements Tree {

    private final Revisions repository;
    private final String commit;
    private final NavigableMap<String, ObjectId> files;

    RevisionTree(Revisions repository, String commit, NavigableMap<String, ObjectId> files) {
        this.repository = repository;
        this.commit = commit;
        this.files = new TreeMap<>(files);
    }

    /** Forty hexadecimal figures. */
    public String commit() {
        return commit;
    }

    /** What Git calls this very content, the same wherever the content is the same; empty if there is no such file. */
    public Optional<String> contentName(String path) {
        return Optional.ofNullable(files.get(path)).map(ObjectId::name);
    }

    @Override
    public List<String> files() {
        return List.copyOf(files.keySet());
    }

    @Override
    public boolean has(String path) {
        return files.containsKey(path);
    }

    @Override
    public byte[] read(String path) throws IOException {
        return repository.bytes(id(path));
    }

    @Override
    public byte[] start(String path, int length) throws IOException {
        return repository.start(id(path), length);
    }

    @Override
    public long size(String path) throws IOException {
        return repository.size(id(path));
    }

    private ObjectId id(String path) throws IOException {
        ObjectId id = files.get(path);
        if (id == null) {
            throw new FileNotFoundException(path);
        }
        return id;
    }
}
