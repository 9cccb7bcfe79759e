package exergue.files;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileSystems;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/**
 * Waits for something to happen in a folder. The system tells most changes at once; since not every system and not every
 * kind of disk does, the wait ends every second in any case, and whoever waits looks for himself what has changed.
 */
public final class FolderWatch implements AutoCloseable {

    private static final long LONGEST_MS = 1000;

    /** An editor writes a file in several steps; they are taken for one as long as no more than this is between them. */
    private static final long TOGETHER_MS = 25;
    private static final int MOST_STEPS = 10;

    private final Path root;
    private final WatchService service;
    private final Set<Path> watched = new HashSet<>();

    public FolderWatch(Path root) throws IOException {
        this.root = root;
        this.service = FileSystems.getDefault().newWatchService();
        watchAll();
    }

    /**
     * Returns when something may have changed.
     *
     * @return false once the watch has been closed
     * @throws InterruptedException if the thread that waits is told to stop
     */
    public boolean await() throws InterruptedException {
        try {
            WatchKey key = service.poll(LONGEST_MS, TimeUnit.MILLISECONDS);
            if (key != null) {
                for (int step = 0; key != null && step < MOST_STEPS; step++) {
                    key.pollEvents();
                    if (!key.reset()) {
                        watched.remove((Path) key.watchable());
                    }
                    key = service.poll(TOGETHER_MS, TimeUnit.MILLISECONDS);
                }
                watchAll();
            } else if (!watched.contains(root)) {
                watchAll(); // it was taken away, and may have come back
            }
            return true;
        } catch (ClosedWatchServiceException e) {
            return false;
        } catch (IOException e) {
            return true; // the folder is just being changed; whoever looks at it will see
        }
    }

    /** New folders too. A system that watches only so many leaves the rest to the second. */
    private void watchAll() throws IOException {
        Files.walkFileTree(root, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                if (!folder.equals(root) && folder.getFileName().toString().startsWith(".")) {
                    return FileVisitResult.SKIP_SUBTREE;
                }
                return watched.contains(folder) || watch(folder) ? FileVisitResult.CONTINUE : FileVisitResult.TERMINATE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException gone) {
                return FileVisitResult.CONTINUE;
            }
        });
    }

    /** Whether the system tells of it. */
    boolean watches(Path folder) {
        return watched.contains(folder);
    }

    private boolean watch(Path folder) {
        try {
            folder.register(service, StandardWatchEventKinds.ENTRY_CREATE, StandardWatchEventKinds.ENTRY_DELETE,
                    StandardWatchEventKinds.ENTRY_MODIFY);
            return watched.add(folder);
        } catch (IOException e) {
            return false;
        }
    }

    @Override
    public void close() throws IOException {
        service.close();
    }
}
