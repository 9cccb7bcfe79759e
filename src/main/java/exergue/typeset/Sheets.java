package exergue.typeset;

import java.util.List;

/**
 * The pages of a book or of an excerpt, and what stands where on them.
 *
 * @param folios as printed, "xii", "47", one for each page
 * @param front  pages before the first page of the body
 * @param areas  in the order of the book; none if nobody has asked where things stand
 */
public record Sheets(List<String> folios, int front, List<Area> areas) {

    static final Sheets NONE = new Sheets(List.of(), 0, List.of());

    public Sheets {
        folios = List.copyOf(folios);
        areas = List.copyOf(areas);
    }

    public int count() {
        return folios.size();
    }
}
