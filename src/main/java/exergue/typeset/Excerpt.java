package exergue.typeset;

import exergue.edition.Book;
import exergue.edition.Part;
import java.util.List;
import java.util.stream.Stream;

/**
 * A stretch of a book to be set by itself, as on the pages it has in the whole book: what an author wants to see first who
 * has changed an entry in it.
 *
 * @param part      id of the part it is in
 * @param from      its first block, from 0, if the part is one of entries; it opens a page, as the part does at 0
 * @param to        the block after its last
 * @param firstPage page of the book that it begins on, from 0
 * @param front     pages before the first page of the body
 */
public record Excerpt(String part, int from, int to, int firstPage, int front) {

    /** A whole part. */
    public static Excerpt whole(String part, int firstPage, int front) {
        return new Excerpt(part, 0, Integer.MAX_VALUE, firstPage, front);
    }

    /** The book with nothing in it but the part. */
    Book alone(Book whole) {
        List<Part> only = Stream.of(whole.front(), whole.body(), whole.back()).flatMap(List::stream)
                .filter(its -> its.id().equals(part)).toList();
        return new Book(whole.language(), whole.title(), List.of(), only, List.of());
    }

    /** What stands on its first page belongs to a part that was opened before. */
    boolean isAmid() {
        return from > 0;
    }

    /**
     * Blank pages before its first, so that this comes to stand on the left or on the right as in the book. There is always
     * one: the engine sets the first page of all a little higher than others.
     */
    public int blank() {
        return firstPage % 2 == 1 ? 1 : 2;
    }
}
