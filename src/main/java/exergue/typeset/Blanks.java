package exergue.typeset;

import exergue.typeset.Marks.Mark;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Blank pages, so that what shall open on a right-hand page does. The engine cannot be asked for it: what it makes of
 * {@code page-break-before: right} depends on what stands before. Right-hand pages have odd folios.
 *
 * @param beforeBody  whether the front matter ends on a right-hand page
 * @param beforeParts anchors of the parts of body and back that have a blank page before them
 */
record Blanks(boolean beforeBody, Set<String> beforeParts) {

    Blanks {
        beforeParts = Set.copyOf(beforeParts);
    }

    static Blanks beforeBody(boolean one) {
        return new Blanks(one, Set.of());
    }

    /**
     * Those that are wanted as well, each of which moves all that follows by a page.
     *
     * @param set     the book as it is without them
     * @param onRight anchors of the parts that open on the right
     */
    Blanks and(SetPages set, List<String> onRight) {
        Set<String> before = new LinkedHashSet<>();
        Set<String> wanted = new HashSet<>(onRight);
        for (Map.Entry<Mark, Integer> mark : set.pageOf().entrySet()) {
            int page = mark.getValue() + before.size();
            boolean opens = mark.getKey().kind() == Marks.Kind.PART && mark.getValue() > set.front();
            if (opens && page % 2 == 1 && wanted.remove(mark.getKey().id())) {
                before.add(mark.getKey().id());
            }
        }
        return new Blanks(beforeBody, before);
    }

    /** From 0. @param front pages before the body, the blank one included */
    Set<Integer> pages(int front, Map<Mark, Integer> pageOf) {
        Set<Integer> pages = new TreeSet<>();
        if (beforeBody) {
            pages.add(front - 1);
        }
        pageOf.forEach((mark, page) -> {
            if (mark.kind() == Marks.Kind.PART && beforeParts.contains(mark.id())) {
                pages.add(page - 1);
            }
        });
        return pages;
    }
}
