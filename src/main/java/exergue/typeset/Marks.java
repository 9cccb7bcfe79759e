package exergue.typeset;

import java.util.ArrayList;
import java.util.List;

/** What can be found on a page, in the order of the book: parts, headings, entries, coins, captions, works. */
final class Marks {

    enum Kind { PART, HEADING, ENTRY, COIN, CAPTION, WORK }

    /**
     * @param id     the book's anchor, which is also the element's id in the page
     * @param number catalogue number of a coin, empty for anything else
     * @param head   words for the running head from here on
     * @param runsOn what stands over a page that an entry runs on to; empty for anything else
     */
    record Mark(Kind kind, String id, String number, String head, RunsOn runsOn) { }

    /** @param numbers of the entry; @param words "Drachm (continued)" */
    record RunsOn(String numbers, String words) {

        static final RunsOn NOTHING = new RunsOn("", "");
    }

    private final List<Mark> all = new ArrayList<>();

    /** @return the id, for the template */
    String add(Kind kind, String id, String number, String head) {
        all.add(new Mark(kind, id, number, head, RunsOn.NOTHING));
        return id;
    }

    /** @return the id, for the template */
    String addEntry(String id, String head, RunsOn runsOn) {
        all.add(new Mark(Kind.ENTRY, id, "", head, runsOn));
        return id;
    }

    List<Mark> all() {
        return all;
    }
}
