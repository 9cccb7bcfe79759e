package exergue.files;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Files written for the author: all of them beside their targets first, then moved over them. Until
 * {@link #deliver()} nothing of the last good book is touched; closing without delivering leaves everything as it was,
 * with no folder made for nothing. What a run that was killed left beside a target goes when that target is written
 * again.
 */
public final class Delivery implements AutoCloseable {

    private static final String PART = ".part";
    private static final Pattern BEGUN = Pattern.compile("\\..+\\.(\\d{1,18})\\" + PART);

    private final Path folder;
    private final Map<Path, Path> besideToTarget = new LinkedHashMap<>();
    private final Set<Path> outdated = new LinkedHashSet<>();
    private final Deque<Path> foldersMade = new ArrayDeque<>();
    private final Map<Path, List<Path>> leftOver = new HashMap<>();

    /** @throws IOException if the folder cannot be made */
    public Delivery(Path folder) throws IOException {
        this.folder = folder;
        make(folder);
    }

    /** A stream for one file of the delivery; the caller closes it. */
    public OutputStream write(String name) throws IOException {
        Path target = folder.resolve(name);
        make(target.getParent());
        removeLeftOver(target.toAbsolutePath());
        Path beside = target.resolveSibling("." + target.getFileName() + "." + ProcessHandle.current().pid() + PART);
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

    /** What the last delivery, or anybody, has left under this name. */
    public Optional<byte[]> last(String name) throws IOException {
        Path target = folder.resolve(name);
        return Files.isRegularFile(target) ? Optional.of(Files.readAllBytes(target)) : Optional.empty();
    }

    /**
     * Writes a list of all files written so far into one folder of the delivery. Files that the last list had and this
     * one does not have are deleted on delivery; anything else in the folder is not touched.
     *
     * @param name of the list, inside the folder
     */
    public void writeList(String inner, String name) throws IOException {
        Path root = folder.resolve(inner).normalize();
        Path list = root.resolve(name);
        if (Files.isRegularFile(list)) {
            for (String line : Files.readAllLines(list)) {
                Paths.inside(line).map(root::resolve).ifPresent(outdated::add);
            }
        }
        StringBuilder lines = new StringBuilder();
        for (Path target : besideToTarget.values()) {
            if (target.normalize().startsWith(root)) {
                lines.append(root.relativize(target.normalize()).toString().replace('\\', '/')).append('\n');
            }
        }
        write(inner + "/" + name, lines.toString().getBytes(StandardCharsets.UTF_8));
    }

    /** Moves every file over its target; returns the targets in the order written. */
    public List<Path> deliver() throws IOException {
        List<Path> targets = new ArrayList<>(besideToTarget.values());
        for (Map.Entry<Path, Path> move : besideToTarget.entrySet()) {
            moveOver(move.getKey(), move.getValue());
        }
        targets.forEach(target -> outdated.remove(target.normalize()));
        for (Path old : outdated) {
            if (Files.isRegularFile(old, LinkOption.NOFOLLOW_LINKS)) {
                Files.delete(old);
            }
        }
        besideToTarget.clear();
        outdated.clear();
        foldersMade.clear();
        return targets;
    }

    /** Remembers which folders were not there before, the innermost first. */
    private void make(Path wanted) throws IOException {
        Deque<Path> missing = new ArrayDeque<>();
        for (Path at = wanted.toAbsolutePath(); at != null && Files.notExists(at); at = at.getParent()) {
            missing.addFirst(at);
        }
        missing.forEach(foldersMade::addFirst);
        Files.createDirectories(wanted);
    }

    /** Deletes what a process that is no more had begun for this target. */
    private void removeLeftOver(Path target) throws IOException {
        Path beside = target.getParent();
        if (!leftOver.containsKey(beside)) {
            try (Stream<Path> files = Files.list(beside)) {
                leftOver.put(beside, files.filter(Delivery::isLeftOver).toList());
            }
        }
        for (Path file : leftOver.get(beside)) {
            if (file.getFileName().toString().matches(Pattern.quote("." + target.getFileName() + ".") + "\\d+" + PART)) {
                Files.deleteIfExists(file);
            }
        }
    }

    private static boolean isLeftOver(Path file) {
        Matcher name = BEGUN.matcher(file.getFileName().toString());
        return name.matches() && ProcessHandle.of(Long.parseLong(name.group(1))).isEmpty();
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
        for (Path made : foldersMade) {
            try {
                Files.deleteIfExists(made);
            } catch (DirectoryNotEmptyException e) {
                return; // someone else has put something there, and it and what is above it stay
            }
        }
    }
}
