package exergue.proof;

import exergue.typeset.Area;
import java.util.List;

/**
 * One page of the proof.
 *
 * @param set   which setting it is from
 * @param page  of that setting, from 0
 * @param folio as printed on it
 * @param fresh set by itself after a change; the rest of the book is still as it was before
 * @param areas what stands where on it
 */
record Leaf(int set, int page, String folio, boolean fresh, List<Area> areas) {

    Leaf {
        areas = List.copyOf(areas);
    }

    /** What a browser asks for it by; never used again for another page. */
    String name() {
        return set + "-" + page;
    }
}
