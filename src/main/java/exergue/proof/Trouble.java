package exergue.proof;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.NoSuchFileException;

/** What went wrong that is no fault of the source, in words. */
final class Trouble {

    private Trouble() { }

    static String of(Throwable problem) {
        if (problem instanceof OutOfMemoryError) {
            return "Java’s memory is not enough for this book. Stop the proof and start it again with more.";
        }
        Throwable cause = problem instanceof UncheckedIOException wrapped ? wrapped.getCause() : problem;
        if (cause instanceof NoSuchFileException gone) {
            return "“" + gone.getFile() + "” is not there";
        }
        if (cause instanceof IOException) {
            return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
        }
        return "This is a fault in Exergue, not in your source (" + cause.getClass().getSimpleName()
                + "). The pages are the last that could be set.";
    }
}
