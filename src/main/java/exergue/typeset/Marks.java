package exergue.typeset;

import java.util.ArrayList;
import java.util.List;

/** What can be found on a page, in the order of the book: parts, headings, entries, coins, works. */
final class Marks {

    enum Kind { PART, HEADING, ENTRY, COIN, WORK }

    /**
     * @param id     the book's anchor, which is also the element's id in the page
     * @param number catalogue number of a coin, empty for anything else
     * @param head   words for the running head from here on
     */
    record Mark(Kind kind, String id, String number, String head) { }

    private final List<Mark> all = new ArrayList<>();

    /** @return the id, for the template */
    String add(Kind kind, String id, String number, String head) {
        all.add(new Mark(kind, id, number, head));
        return id;
    }

    List<Mark> all() {
        return all;
    }
}
