package exergue.files;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Files written for the author: all of them beside their targets first, then moved over them. Until
 * {@link #deliver()} nothing of the last good book is touched; closing without delivering leaves it as it was.
 */
public final class Delivery implements AutoCloseable {

    private final Path folder;
    private final Map<Path, Path> besideToTarget = new LinkedHashMap<>();

    /** @throws IOException if the folder cannot be made */
    public Delivery(Path folder) throws IOException {
        this.folder = Files.createDirectories(folder);
    }

    /** A stream for one file of the delivery; the caller closes it. */
    public OutputStream write(String name) throws IOException {
        Path target = folder.resolve(name);
        Files.createDirectories(target.getParent());
        Path beside = target.resolveSibling("." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        besideToTarget.put(beside, target);
        return new BufferedOutputStream(Files.newOutputStream(beside));
    }

    public void write(String name, byte[] bytes) throws IOException {
        try (OutputStream out = write(name)) {
            out.write(bytes);
        }
    }

    /** As {@link #write(String, byte[])}, but never over anything: refuses if there is something of this name. */
    public void writeNew(String name, byte[] bytes) throws IOException {
        Path target = folder.resolve(name);
        if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            throw new FileAlreadyExistsException(target.toString());
        }
        write(name, bytes);
    }

    /** Moves every file over its target; returns the targets in the order written. */
    public List<Path> deliver() throws IOException {
        List<Path> targets = new ArrayList<>(besideToTarget.values());
        for (Map.Entry<Path, Path> move : besideToTarget.entrySet()) {
            moveOver(move.getKey(), move.getValue());
        }
        besideToTarget.clear();
        return targets;
    }

    private static void moveOver(Path beside, Path target) throws IOException {
        try {
            Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    @Override
    public void close() throws IOException {
        for (Path beside : besideToTarget.keySet()) {
            Files.deleteIfExists(beside);
        }
    }
}
