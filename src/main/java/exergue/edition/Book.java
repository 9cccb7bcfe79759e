package exergue.edition;

import exergue.model.TitleMatter;
import java.util.List;

/**
 * The book as data: everything that will be printed, in order, in words. Templates lay it out and decide nothing.
 *
 * @param front parts with roman folios
 * @param body  parts with arabic folios, from 1
 * @param back  parts after the body, folios go on
 * @param onRight anchors of the parts of body and back that open on a right-hand page, besides the first of the body
 */
public record Book(String language, TitleMatter title, List<Part> front, List<Part> body, List<Part> back, List<String> onRight) {

    public Book {
        front = List.copyOf(front);
        body = List.copyOf(body);
        back = List.copyOf(back);
        onRight = List.copyOf(onRight);
    }

    /** Parts open on the next page, whichever that is. */
    public Book(String language, TitleMatter title, List<Part> front, List<Part> body, List<Part> back) {
        this(language, title, front, body, back, List.of());
    }
}
