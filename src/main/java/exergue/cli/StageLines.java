package exergue.cli;

import exergue.Progress;
import exergue.Stage;
import java.io.PrintWriter;
import java.util.Timer;
import java.util.TimerTask;

/**
 * One line for each stage and for each step that it tells of. Where nobody watches, nothing is said in the first
 * second, so that quick runs stay quiet.
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
            say(stage.words());
        }
    }

    @Override
    public synchronized void reached(String step, int done, int of) {
        if (speaking) {
            say(current.words() + ": " + step + (of == 0 ? "" : " (" + (done == 0 ? "" : done + " of ") + of + ")"));
        }
    }

    synchronized void speak() {
        if (!speaking) {
            say(current.words());
        }
        speaking = true;
    }

    private void say(String what) {
        err.println("exergue: " + what + " …");
        err.flush();
    }

    @Override
    public void close() {
        timer.cancel();
    }
}
