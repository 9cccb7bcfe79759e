package exergue.source;

import exergue.files.Tree;
import exergue.source.keys.FileKind;
import exergue.source.shape.Desk;
import exergue.source.text.Notebook;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * Entries as they were read the last time, for a program that reads the same source again and again while it is being
 * written. An entry is read anew if a byte of its file has changed, or anything it was read against: the house style, the
 * conventions, the language, or which files there are. What comes out is the same as without it.
 */
public final class KeptEntries {

    private static final Notebook NONE = new Notebook();

    private final boolean keeps;
    private final Map<String, Folder<?>> folders = new ConcurrentHashMap<>();

    private KeptEntries(boolean keeps) {
        this.keeps = keeps;
    }

    /** For one reading: nothing is kept. */
    public static KeptEntries nothing() {
        return new KeptEntries(false);
    }

    public static KeptEntries fromNowOn() {
        return new KeptEntries(true);
    }

    @SuppressWarnings("unchecked") // a kind of file makes one kind of entry
    <T> Folder<T> folder(FileKind<T> kind, Desk desk) {
        Desk against = desk.with(NONE);
        return (Folder<T>) folders.compute(kind.where(),
                (where, before) -> before != null && before.against.equals(against) ? before : new Folder<T>(keeps, against));
    }

    /** The entries of one kind. */
    static final class Folder<T> {

        private record Kept<T>(byte[] file, Apart<T> read) { }

        private final boolean keeps;
        private final Desk against;
        private final Map<String, Kept<T>> entries = new ConcurrentHashMap<>();

        private Folder(boolean keeps, Desk against) {
            this.keeps = keeps;
            this.against = against;
        }

        /** What was read of this file before, or what is read now. @throws UncheckedIOException if the disk fails */
        Apart<T> or(Tree tree, String file, Supplier<Apart<T>> now) {
            if (!keeps) {
                return now.get();
            }
            try {
                byte[] bytes = tree.read(file);
                Kept<T> before = entries.get(file);
                if (before == null || !Arrays.equals(before.file(), bytes)) {
                    before = new Kept<>(bytes, now.get());
                    entries.put(file, before);
                }
                return before.read();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
