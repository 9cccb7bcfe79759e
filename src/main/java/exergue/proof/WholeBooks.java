package exergue.proof;

import exergue.Enclosed;
import exergue.Exergue;
import exergue.Exergue.Checked;
import exergue.Exergue.Made;
import exergue.Prints;
import exergue.Progress;
import exergue.Stage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/** Sets whole books one after the other, of several that are wanted only the last. */
final class WholeBooks implements AutoCloseable {

    private final ProofTable table;
    private final Thread setter = new Thread(this::work, "exergue-proof-book");
    private Optional<Checked> wanted = Optional.empty();
    private volatile int orders;

    WholeBooks(ProofTable table) {
        this.table = table;
        setter.setDaemon(true);
    }

    void open() {
        setter.start();
    }

    /** The book that is being set is no longer wanted. */
    synchronized void drop() {
        orders++;
        wanted = Optional.empty();
    }

    /** @param checked without errors, its photographs ready */
    synchronized void set(Checked checked) {
        orders++;
        wanted = Optional.of(checked);
        notifyAll();
    }

    private synchronized Checked next() throws InterruptedException {
        while (wanted.isEmpty()) {
            wait();
        }
        Checked next = wanted.get();
        wanted = Optional.empty();
        return next;
    }

    private void work() {
        try {
            while (!Thread.currentThread().isInterrupted()) {
                Checked checked = next();
                set(checked, orders);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void set(Checked checked, int order) {
        try {
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            Made made = Exergue.typeset(checked, Enclosed.NOTHING, Prints.only(pdf), new UntilDropped(order));
            table.showWhole(checked, made, pdf.toByteArray(), () -> order == orders);
        } catch (CancellationException e) {
            return; // a newer one is on its way
        } catch (IOException | UncheckedIOException e) {
            table.trouble("The book cannot be set at the moment: " + Trouble.of(e) + ".");
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            table.trouble(Trouble.of(e));
        }
    }

    /** Asked at every step whether to go on. */
    private final class UntilDropped implements Progress {

        private final int order;

        UntilDropped(int order) {
            this.order = order;
        }

        @Override
        public void starts(Stage stage) {
            stopIfDropped();
        }

        @Override
        public void reached(String step, int done, int of) {
            stopIfDropped();
        }

        private void stopIfDropped() {
            if (order != orders) {
                throw new CancellationException();
            }
        }
    }

    @Override
    public void close() {
        setter.interrupt();
    }
}
