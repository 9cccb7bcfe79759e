package exergue.cli;

import exergue.Progress;
import exergue.Stage;
import java.io.PrintWriter;
import java.util.Timer;
import java.util.TimerTask;

/**
 * One line for each stage. Where nobody watches, nothing is said in the first second, so that quick runs stay quiet.
 */
final class StageLines implements Progress, AutoCloseable {

    private static final long QUIET_MILLISECONDS = 1000;

    private final PrintWriter err;
    private final Timer timer = new Timer("progress", true);
    private boolean speaking;
    private Stage current = Stage.READ;

    StageLines(Terminal terminal) {
        this(terminal.err(), terminal.attended());
        timer.schedule(new TimerTask() {
            @Override
            public void run() {
                speak();
            }
        }, QUIET_MILLISECONDS);
    }

    /** Without a timer: says nothing until {@link #speak()} unless it speaks at once. */
    StageLines(PrintWriter err, boolean atOnce) {
        this.err = err;
        this.speaking = atOnce;
    }

    @Override
    public synchronized void starts(Stage stage) {
        current = stage;
        if (speaking) {
            say();
        }
    }

    synchronized void speak() {
        if (!speaking) {
            say();
        }
        speaking = true;
    }

    private void say() {
        err.println("exergue: " + current.words() + " …");
        err.flush();
    }

    @Override
    public void close() {
        timer.cancel();
    }
}
