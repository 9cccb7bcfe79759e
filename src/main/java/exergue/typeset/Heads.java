package exergue.typeset;

import exergue.typeset.Anchors.Anchor;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Running heads and folios, page by page, as what {@code heads.ftlh} sees. They are set after the pages are known and
 * printed over them: only then is it certain which numbers a page has, also where an entry runs on from the page
 * before.
 */
final class Heads {

    private final SetPages pages;
    private final Map<String, String> kinds;
    private final String bookTitle;

    /** @param kinds kind of each part by its anchor's address */
    Heads(SetPages pages, Map<String, String> kinds, String bookTitle) {
        this.pages = pages;
        this.kinds = kinds;
        this.bookTitle = bookTitle;
    }

    Map<String, Object> values() {
        List<Map<String, Object>> sheets = new ArrayList<>();
        List<List<Anchor>> byPage = pages.byPage();
        Anchor part = null;
        String running = "";
        for (int page = 0; page < pages.count(); page++) {
            List<Anchor> here = byPage.get(page);
            boolean opening = false;
            for (Anchor anchor : here) {
                if (anchor.kind() == Anchors.Kind.PART) {
                    part = anchor;
                    opening = true;
                    running = anchor.head();
                }
            }
            String head = here.stream().filter(a -> a.kind() != Anchors.Kind.PART).map(Anchor::head)
                    .findFirst().orElse(running);
            sheets.add(sheet(page, part, opening, head, here));
            running = here.isEmpty() ? running : here.get(here.size() - 1).head();
        }
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("sheets", sheets);
        return values;
    }

    private Map<String, Object> sheet(int page, Anchor part, boolean opening, String head, List<Anchor> here) {
        List<String> numbers = here.stream().map(Anchor::number).filter(n -> !n.isEmpty()).toList();
        boolean right = page % 2 == 0;
        Map<String, Object> sheet = new LinkedHashMap<>();
        sheet.put("side", right ? "right" : "left");
        sheet.put("kind", blank(page, here) ? "blank" : part == null ? "text" : kinds.get(part.address()));
        sheet.put("opening", opening);
        sheet.put("book", bookTitle);
        sheet.put("head", head);
        sheet.put("first", numbers.isEmpty() ? "" : numbers.get(0));
        sheet.put("last", numbers.isEmpty() ? "" : numbers.get(numbers.size() - 1));
        sheet.put("folio", pages.folio(page));
        return sheet;
    }

    /** The one page without anything on it: the last before the body, where the front matter ends on a right page. */
    private boolean blank(int page, List<Anchor> here) {
        return here.isEmpty() && page == pages.front() - 1 && pages.blankBeforeBody();
    }
}
