package exergue.files;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * A folder that somebody is working on. Each time it is asked it gives the tree as it stands then; texts are in memory from
 * that moment on, so that one reading does not see half of a change, and those that have kept their size and time of change
 * are not read again, unless that time is so near that a second change could bear it too.
 */
public final class LiveFolder {

    /** What an author writes; everything else is read when somebody wants it. */
    private static final Set<String> TEXTS = Set.of("yaml", "md", "bib", "json", "csl", "css", "ftlh");
    /** In bytes; a larger one is a mistake. */
    private static final long MOST_KEPT = 1L << 20;

    /** By which a file that has changed is known. */
    record Seen(long size, FileTime changed) { }

    /** @param settled another change would bear another time */
    private record Kept(Seen seen, byte[] bytes, boolean settled) { }

    private final Path root;
    private final Supplier<Instant> clock;
    private Map<String, Kept> kept = Map.of();

    /** @param clock says when it is looked at: a picture that was changed just then may still be changing */
    public LiveFolder(Path root, Supplier<Instant> clock) {
        this.root = root;
        this.clock = clock;
    }

    /** @throws IOException if the folder cannot be read */
    public Moment now() throws IOException {
        Instant looked = clock.get();
        FolderTree folder = new FolderTree(root, looked);
        Map<String, Seen> files = new TreeMap<>(folder.seen());
        Map<String, Kept> texts = new TreeMap<>();
        for (Map.Entry<String, Seen> file : List.copyOf(files.entrySet())) {
            if (file.getValue().size() <= MOST_KEPT && isText(file.getKey())) {
                try {
                    texts.put(file.getKey(), text(file.getKey(), file.getValue(), folder, looked));
                } catch (NoSuchFileException e) {
                    files.remove(file.getKey()); // taken away since it was listed
                }
            }
        }
        kept = texts;
        return new Moment(folder, files, texts);
    }

    private Kept text(String path, Seen seen, FolderTree folder, Instant looked) throws IOException {
        Kept before = kept.get(path);
        if (before != null && before.settled() && before.seen().equals(seen)) {
            return before;
        }
        byte[] now = folder.read(path);
        boolean settled = seen.changed().toInstant().plus(FolderTree.TICK).isBefore(looked);
        return new Kept(seen, before != null && Arrays.equals(before.bytes(), now) ? before.bytes() : now, settled);
    }

    private static boolean isText(String path) {
        return TEXTS.contains(path.substring(path.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT));
    }

    /** The folder at one moment. */
    public static final class Moment implements Tree {

        private final FolderTree folder;
        private final Map<String, Seen> files;
        private final Map<String, Kept> texts;

        private Moment(FolderTree folder, Map<String, Seen> files, Map<String, Kept> texts) {
            this.folder = folder;
            this.files = files;
            this.texts = texts;
        }

        /** Files that are new, gone or changed since another moment. */
        public Set<String> since(Moment before) {
            Set<String> all = new TreeSet<>(files.keySet());
            all.addAll(before.files.keySet());
            return all.stream().filter(path -> !isAsIn(before, path)).collect(Collectors.toCollection(TreeSet::new));
        }

        /** Texts are compared as they are in memory: one that was only saved again has not changed. */
        private boolean isAsIn(Moment before, String path) {
            Kept text = texts.get(path);
            Kept old = before.texts.get(path);
            return text != null && old != null ? Arrays.equals(text.bytes(), old.bytes())
                    : Objects.equals(files.get(path), before.files.get(path));
        }

        @Override
        public List<String> files() {
            return List.copyOf(files.keySet());
        }

        @Override
        public boolean has(String path) {
            return files.containsKey(path) || folder.has(path);
        }

        @Override
        public byte[] read(String path) throws IOException {
            Kept text = texts.get(path);
            return text == null ? folder.read(path) : text.bytes().clone();
        }

        @Override
        public byte[] start(String path, int length) throws IOException {
            return texts.containsKey(path) ? Tree.super.start(path, length) : folder.start(path, length);
        }

        @Override
        public long size(String path) throws IOException {
            Seen file = files.get(path);
            if (file == null) {
                throw new NoSuchFileException(path);
            }
            Kept text = texts.get(path);
            return text == null ? file.size() : text.bytes().length;
        }

        @Override
        public Optional<String> witness(String path) throws IOException {
            return folder.witness(path);
        }
    }
}
