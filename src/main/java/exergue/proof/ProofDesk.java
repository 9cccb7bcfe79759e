package exergue.proof;

import exergue.Exergue;
import exergue.Exergue.Checked;
import exergue.Progress;
import exergue.files.FolderWatch;
import exergue.files.LiveFolder;
import exergue.files.Tree;
import exergue.photo.print.Darkroom;
import exergue.source.KeptEntries;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * Where the proof is made, again after every change of the source. Two work here: one looks at the folder, checks it and
 * sets the changed entry's pages; the other makes photographs ready and sets whole books, and drops the one it is at when
 * there is a newer source.
 */
public final class ProofDesk implements AutoCloseable {

    private static final BooleanSupplier ALWAYS = () -> true;

    private final LiveFolder folder;
    private final FolderWatch watch;
    private final UnaryOperator<Tree> selection;
    private final Darkroom darkroom;
    private final KeptEntries kept = KeptEntries.fromNowOn();
    private final ProofTable table = new ProofTable();
    private final WholeBooks books;
    private final Thread looker = new Thread(this::look, "exergue-proof-look");

    private LiveFolder.Moment last;
    private Set<String> seen = Set.of();

    /**
     * @param clock     of the machine
     * @param selection what of the folder is the source
     * @param darkroom  where its photographs are made ready
     * @throws IOException if the folder cannot be watched
     */
    public ProofDesk(Path source, Supplier<Instant> clock, UnaryOperator<Tree> selection, Darkroom darkroom) throws IOException {
        this.folder = new LiveFolder(source, clock);
        this.watch = new FolderWatch(source);
        this.selection = selection;
        this.darkroom = darkroom;
        this.books = new WholeBooks(table, darkroom);
        looker.setDaemon(true);
    }

    /** Begins to work; the first proof has no pages yet. */
    public void open() {
        looker.start();
        books.open();
    }

    ProofTable table() {
        return table;
    }

    private void look() {
        try {
            do {
                try {
                    lookOnce();
                } catch (IOException | UncheckedIOException e) {
                    last = null; // so that it is looked at again, changed or not
                    table.trouble("The folder cannot be read at the moment: " + Trouble.of(e) + ".", ALWAYS);
                } catch (RuntimeException | Error e) {
                    table.trouble(Trouble.of(e), ALWAYS);
                }
            } while (watch.await());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void lookOnce() throws IOException {
        LiveFolder.Moment now = folder.now();
        Tree source = selection.apply(now);
        Set<String> files = new TreeSet<>(source.files());
        Set<String> changed = last == null ? files : now.since(last).stream()
                .filter(path -> files.contains(path) || seen.contains(path)).collect(Collectors.toCollection(TreeSet::new));
        boolean first = last == null;
        last = now;
        seen = files;
        if (!changed.isEmpty() || first) {
            proof(source, changed);
        }
    }

    private void proof(Tree source, Set<String> changed) throws IOException {
        books.drop();
        Checked checked = Exergue.check(source, kept, Progress.SILENT);
        Optional<String> anchor = table.checked(checked, changed);
        if (!checked.isSound()) {
            return;
        }
        if (anchor.isEmpty()) {
            books.set(checked);
            return;
        }
        Checked ready = Exergue.pictures(checked, darkroom, Progress.SILENT);
        try {
            table.showFirst(ready, anchor.get());
        } finally {
            books.set(ready); // whatever is in the way of the one page may not be in that of the book
        }
    }

    @Override
    public void close() throws IOException {
        watch.close();
        looker.interrupt();
        books.close();
        table.close();
    }
}
