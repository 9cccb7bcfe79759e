package exergue;

import java.io.OutputStream;
import java.util.Optional;

/**
 * Where the book is written to; the streams are left open.
 *
 * @param press gets the same pages as a printer wants them, if they are asked for
 */
public record Prints(OutputStream book, Optional<OutputStream> press) {

    public static Prints only(OutputStream book) {
        return new Prints(book, Optional.empty());
    }
}
