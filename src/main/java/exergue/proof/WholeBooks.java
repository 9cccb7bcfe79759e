package exergue.proof;

import exergue.Enclosed;
import exergue.Exergue;
import exergue.Exergue.Checked;
import exergue.Exergue.Made;
import exergue.Prints;
import exergue.Progress;
import exergue.Stage;
import exergue.photo.print.Darkroom;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/** Sets whole books one after the other, of several that are wanted only the last. */
final class WholeBooks implements AutoCloseable {

    /** A source to set. @param number of which only the last given is still wanted */
    private record Order(int number, Checked checked) { }

    private final ProofTable table;
    private final Darkroom darkroom;
    private final Thread setter = new Thread(this::work, "exergue-proof-book");
    private Optional<Order> wanted = Optional.empty();
    private volatile int orders;

    WholeBooks(ProofTable table, Darkroom darkroom) {
        this.table = table;
        this.darkroom = darkroom;
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

    /** @param checked without errors; if its photographs are not ready yet, they are made so first */
    synchronized void set(Checked checked) {
        orders++;
        wanted = Optional.of(new Order(orders, checked));
        notifyAll();
    }

    private synchronized Order next() throws InterruptedException {
        while (wanted.isEmpty()) {
            wait();
        }
        Order next = wanted.get();
        wanted = Optional.empty();
        return next;
    }

    private void work() {
        try {
            while (!Thread.currentThread().isInterrupted()) {
                set(next());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void set(Order order) {
        BooleanSupplier current = () -> order.number() == orders;
        try {
            Progress progress = new UntilDropped(current);
            Checked ready = order.checked().pictures().isPresent() ? order.checked() : Exergue.pictures(order.checked(), darkroom, progress);
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            Made made = Exergue.typeset(ready, Enclosed.NOTHING, Prints.forScreen(pdf), progress);
            table.showWhole(ready, made, pdf.toByteArray(), current);
        } catch (CancellationException e) {
            return; // a newer one is on its way
        } catch (IOException | UncheckedIOException e) {
            table.trouble("The book cannot be set at the moment: " + Trouble.of(e) + ".", current);
        } catch (RuntimeException | Error e) {
            table.trouble(Trouble.of(e), current);
        }
    }

    /** Asked at every step whether to go on. The first time photographs take long enough to tell how far they are. */
    private final class UntilDropped implements Progress {

        private final BooleanSupplier current;
        private Stage stage = Stage.READ;

        UntilDropped(BooleanSupplier current) {
            this.current = current;
        }

        @Override
        public void starts(Stage next) {
            stopIfDropped();
            stage = next;
            table.doing("", current);
        }

        @Override
        public void reached(String step, int done, int of) {
            stopIfDropped();
            if (stage == Stage.PICTURES) {
                table.doing("Making the photographs ready: " + done + " of " + of + " coins", current);
            }
        }

        private void stopIfDropped() {
            if (!current.getAsBoolean()) {
                throw new CancellationException();
            }
        }
    }

    @Override
    public void close() {
        drop();
        setter.interrupt();
    }
}
