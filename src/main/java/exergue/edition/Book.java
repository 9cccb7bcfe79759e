package exergue.edition;

import exergue.model.TitleMatter;
import java.util.List;

/**
 * The book as data: everything that will be printed, in order, in words. Templates lay it out and decide nothing.
 *
 * @param front parts with roman folios
 * @param body  parts with arabic folios, from 1
 * @param back  parts after the body, folios go on
 */
public record Book(String language, TitleMatter title, List<Part> front, List<Part> body, List<Part> back) {

    public Book {
        front = List.copyOf(front);
        body = List.copyOf(body);
        back = List.copyOf(back);
    }
}
