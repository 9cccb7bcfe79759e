package exergue;

import java.io.OutputStream;
import java.util.Optional;

/**
 * Where the book is written to; the streams are left open.
 *
 * @param press  gets the same pages as a printer wants them, if they are asked for
 * @param placed whether somebody wants to know what stands where on the pages
 */
public record Prints(OutputStream book, Optional<OutputStream> press, boolean placed) {

    public Prints(OutputStream book, Optional<OutputStream> press) {
        this(book, press, false);
    }

    public static Prints only(OutputStream book) {
        return new Prints(book, Optional.empty());
    }

    /** Pages to be looked at, of which it is known what stands where. */
    public static Prints forScreen(OutputStream book) {
        return new Prints(book, Optional.empty(), true);
    }
}
