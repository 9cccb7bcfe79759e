package exergue.review.git;

import exergue.files.GitFolder;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.jgit.errors.AmbiguousObjectException;
import org.eclipse.jgit.errors.IncorrectObjectTypeException;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.errors.RevisionSyntaxException;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectLoader;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;
import org.eclipse.jgit.treewalk.TreeWalk;

/**
 * The revisions of one repository. Small files are kept once read, as two revisions share most of theirs. The reader of
 * sources asks from several threads, and the library's reader serves one at a time.
 */
public final class Revisions implements AutoCloseable {

    /** An entry is far smaller; a photograph is larger and is not kept. In bytes. */
    private static final int KEPT = 1 << 16;

    private final Repository repository;
    private final ObjectReader reader;
    private final Map<ObjectId, byte[]> kept = new HashMap<>();

    private Revisions(Repository repository) {
        this.repository = repository;
        this.reader = repository.newObjectReader();
    }

    /** @throws IOException if it cannot be read, or is not a repository after all */
    public static Revisions open(GitFolder folder) throws IOException {
        StillReader.please();
        Repository repository = new FileRepositoryBuilder().setGitDir(folder.git()).setMustExist(true).build();
        if ("sha256".equalsIgnoreCase(repository.getConfig().getString("extensions", null, "objectformat"))) {
            repository.close();
            throw new IOException("the Git repository names its contents by SHA-256, which is not understood yet; "
                    + "compare two folders");
        }
        return new Revisions(repository);
    }

    /**
     * A folder as it was.
     *
     * @param revision as Git names one: a branch, a tag, the start of a commit's hash, {@code HEAD~3}
     * @param folder   path in the repository; empty for the whole
     * @return empty if there is no such revision; a tree without files if there was no such folder then
     */
    public Optional<RevisionTree> tree(String revision, String folder) throws IOException {
        Optional<ObjectId> commit = commit(revision);
        if (commit.isEmpty()) {
            return Optional.empty();
        }
        try (RevWalk walk = new RevWalk(reader)) {
            RevCommit at = walk.parseCommit(commit.get());
            return Optional.of(new RevisionTree(this, at.name(), files(at, folder)));
        }
    }

    private Optional<ObjectId> commit(String revision) throws IOException {
        try {
            return Optional.ofNullable(repository.resolve(revision + "^{commit}"));
        } catch (RevisionSyntaxException | AmbiguousObjectException | IncorrectObjectTypeException
                | MissingObjectException e) {
            // Nothing that names one commit.
            return Optional.empty();
        }
    }

    private NavigableMap<String, ObjectId> files(RevCommit commit, String folder) throws IOException {
        NavigableMap<String, ObjectId> files = new TreeMap<>();
        ObjectId root = commit.getTree();
        if (!folder.isEmpty()) {
            try (TreeWalk down = TreeWalk.forPath(reader, folder, root)) {
                if (down == null || down.getFileMode() != FileMode.TREE) {
                    return files;
                }
                root = down.getObjectId(0);
            }
        }
        try (TreeWalk walk = new TreeWalk(repository, reader)) {
            walk.addTree(root);
            while (walk.next()) {
                if (walk.getNameString().startsWith(".")) {
                    continue;
                }
                if (walk.isSubtree()) {
                    walk.enterSubtree();
                } else if (walk.getFileMode() == FileMode.REGULAR_FILE || walk.getFileMode() == FileMode.EXECUTABLE_FILE) {
                    files.put(walk.getPathString(), walk.getObjectId(0));
                }
            }
        }
        return files;
    }

    /** Names of branches and tags as one would type them, in alphabetical order. */
    public List<String> names() throws IOException {
        List<String> names = new ArrayList<>();
        for (Ref ref : repository.getRefDatabase().getRefs()) {
            names.add(Repository.shortenRefName(ref.getName()));
        }
        return names.stream().distinct().sorted().toList();
    }

    synchronized byte[] bytes(ObjectId id) throws IOException {
        byte[] known = kept.get(id);
        if (known == null) {
            known = loader(id).getBytes();
            if (known.length <= KEPT) {
                kept.put(id, known);
            }
        }
        return known.clone();
    }

    /** A small file is kept at once: whoever asks for its size is about to read it. */
    synchronized long size(ObjectId id) throws IOException {
        byte[] known = kept.get(id);
        if (known != null) {
            return known.length;
        }
        ObjectLoader loader = loader(id);
        if (loader.getSize() <= KEPT) {
            kept.put(id, loader.getBytes());
        }
        return loader.getSize();
    }

    synchronized byte[] start(ObjectId id, int length) throws IOException {
        try (InputStream in = loader(id).openStream()) {
            return in.readNBytes(length);
        }
    }

    private ObjectLoader loader(ObjectId id) throws IOException {
        return reader.open(id);
    }

    @Override
    public void close() {
        reader.close();
        repository.close();
    }
}
