package exergue.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A tree on the disk. Symbolic links that lead out of the folder are not followed. What there is is looked up once, so
 * that one run works on one list.
 */
public final class FolderTree implements Tree {

    /** The coarsest steps in which a disk notes times: those of FAT. */
    static final Duration TICK = Duration.ofSeconds(2);

    private final Path root;
    private final Path realRoot;
    private final Instant opened;

    /** Folders that lie inside once links are followed: asked of the disk once a folder, not once a file. */
    private final Set<Path> inside = ConcurrentHashMap.newKeySet();
    private volatile List<String> listed;

    /** A tree whose files have no witness. */
    public FolderTree(Path root) throws IOException {
        this(root, Instant.MIN);
    }

    /**
     * @param opened the time by the clock of this machine: a file that was changed after it, or so shortly before that the
     *               next change could bear the same time, has no witness
     * @throws NoSuchFileException   if the folder is not there
     * @throws NotDirectoryException if it is a file
     * @throws IOException           if it cannot be read
     */
    public FolderTree(Path root, Instant opened) throws IOException {
        if (!Files.exists(root)) {
            throw new NoSuchFileException(root.toString());
        }
        if (!Files.isDirectory(root)) {
            throw new NotDirectoryException(root.toString());
        }
        this.root = root;
        this.realRoot = root.toRealPath();
        this.opened = opened;
    }

    /** True if there is a folder of this name that can be looked into. */
    public static boolean isFolder(Path path) {
        return Files.isDirectory(path) && Files.isReadable(path);
    }

    @Override
    public List<String> files() throws IOException {
        if (listed == null) {
            listed = list();
        }
        return listed;
    }

    private List<String> list() throws IOException {
        return List.copyOf(seen().keySet());
    }

    /** Every file of the tree with its size and time of change, sorted by path. */
    Map<String, LiveFolder.Seen> seen() throws IOException {
        Map<String, LiveFolder.Seen> found = new TreeMap<>();
        Files.walkFileTree(root, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                return !folder.equals(root) && isHidden(folder)
                        ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                if (!isHidden(file) && (attributes.isRegularFile() || leadsInside(file))) {
                    found.put(root.relativize(file).toString().replace('\\', '/'), seen(file, attributes));
                }
                return FileVisitResult.CONTINUE;
            }

            /** What an editor or Git has taken away since the folder was opened is no part of it any more. */
            @Override
            public FileVisitResult visitFileFailed(Path file, IOException failed) throws IOException {
                if (failed instanceof NoSuchFileException && !file.equals(root)) {
                    return FileVisitResult.CONTINUE;
                }
                throw failed;
            }
        });
        return Collections.unmodifiableMap(found);
    }

    /** Of a link, what it leads to. */
    private static LiveFolder.Seen seen(Path file, BasicFileAttributes own) throws IOException {
        BasicFileAttributes its = own.isRegularFile() ? own : Files.readAttributes(file, BasicFileAttributes.class);
        return new LiveFolder.Seen(its.size(), its.lastModifiedTime());
    }

    private static boolean isHidden(Path path) {
        String name = path.getFileName().toString();
        return name.startsWith(".") || Leavings.isOne(name);
    }

    private boolean leadsInside(Path file) {
        try {
            return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) ? folderInside(folderOf(file))
                    : file.toRealPath().startsWith(realRoot) && Files.isRegularFile(file);
        } catch (IOException e) {
            return false;
        }
    }

    /** A file directly in the folder one is in has no parent in its path. */
    private static Path folderOf(Path file) {
        return file.getParent() == null ? Path.of("") : file.getParent();
    }

    private boolean folderInside(Path folder) throws IOException {
        if (inside.contains(folder)) {
            return true;
        }
        boolean leadsInside = folder.toRealPath().startsWith(realRoot);
        if (leadsInside) {
            inside.add(folder);
        }
        return leadsInside;
    }

    @Override
    public boolean has(String path) {
        return Paths.inside(path).map(p -> root.resolve(p)).filter(this::leadsInside).isPresent();
    }

    @Override
    public byte[] read(String path) throws IOException {
        return Files.readAllBytes(resolve(path));
    }

    /** Whether the file lies inside is asked once. */
    @Override
    public Optional<byte[]> readUpTo(String path, long most) throws IOException {
        Path file = resolve(path);
        return Files.size(file) > most ? Optional.empty() : Optional.of(Files.readAllBytes(file));
    }

    @Override
    public byte[] start(String path, int length) throws IOException {
        try (InputStream in = Files.newInputStream(resolve(path))) {
            return in.readNBytes(length);
        }
    }

    @Override
    public long size(String path) throws IOException {
        return Files.size(resolve(path));
    }

    @Override
    public String digest(String path) throws IOException {
        try (InputStream in = Files.newInputStream(resolve(path))) {
            return Digest.of(in);
        }
    }

    /** Where the file lies, its size and when it was last changed. */
    @Override
    public Optional<String> witness(String path) throws IOException {
        BasicFileAttributes now = Files.readAttributes(resolve(path), BasicFileAttributes.class);
        Instant changed = now.lastModifiedTime().toInstant();
        return changed.plus(TICK).isBefore(opened)
                ? Optional.of(realRoot.resolve(path) + "\n" + now.size() + "\n" + changed) : Optional.empty();
    }

    private Path resolve(String path) throws IOException {
        Path file = root.resolve(Paths.inside(path)
                .orElseThrow(() -> new NoSuchFileException(path, null, "leads out of the source folder")));
        if (!leadsInside(file)) {
            throw new NoSuchFileException(path);
        }
        return file;
    }
}
