package exergue.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A tree on the disk. Symbolic links that lead out of the folder are not followed. */
public final class FolderTree implements Tree {

    private final Path root;
    private final Path realRoot;

    /**
     * @throws NoSuchFileException   if the folder is not there
     * @throws NotDirectoryException if it is a file
     * @throws IOException           if it cannot be read
     */
    public FolderTree(Path root) throws IOException {
        if (!Files.exists(root)) {
            throw new NoSuchFileException(root.toString());
        }
        if (!Files.isDirectory(root)) {
            throw new NotDirectoryException(root.toString());
        }
        this.root = root;
        this.realRoot = root.toRealPath();
    }

    @Override
    public List<String> files() throws IOException {
        List<String> found = new ArrayList<>();
        Files.walkFileTree(root, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                return !folder.equals(root) && isHidden(folder)
                        ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                if (!isHidden(file) && (attributes.isRegularFile() || leadsInside(file))) {
                    found.add(root.relativize(file).toString().replace('\\', '/'));
                }
                return FileVisitResult.CONTINUE;
            }
        });
        Collections.sort(found);
        return List.copyOf(found);
    }

    private static boolean isHidden(Path path) {
        return path.getFileName().toString().startsWith(".");
    }

    private boolean leadsInside(Path file) {
        try {
            Path real = file.toRealPath();
            return real.startsWith(realRoot) && Files.isRegularFile(real);
        } catch (IOException e) {
            return false;
        }
    }

    @Override
    public boolean has(String path) {
        return Paths.inside(path).map(p -> root.resolve(p)).filter(this::leadsInside).isPresent();
    }

    @Override
    public byte[] read(String path) throws IOException {
        return Files.readAllBytes(resolve(path));
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

    private Path resolve(String path) throws IOException {
        Path file = root.resolve(Paths.inside(path)
                .orElseThrow(() -> new NoSuchFileException(path, null, "leads out of the source folder")));
        if (!leadsInside(file)) {
            throw new NoSuchFileException(path);
        }
        return file;
    }
}
