package exergue.typeset;

import exergue.typeset.Marks.Kind;
import exergue.typeset.Marks.Mark;
import exergue.typeset.Marks.RunsOn;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Running heads and folios, page by page, as what {@code heads.ftlh} sees. They are set after the pages are known and
 * printed over them: only then is it certain which numbers a page has, also where an entry runs on from the page
 * before.
 */
final class Heads {

    private final SetPages pages;
    private final Map<String, String> kinds;
    private final String bookTitle;

    /** @param kinds kind of each part by its id */
    Heads(SetPages pages, Map<String, String> kinds, String bookTitle) {
        this.pages = pages;
        this.kinds = kinds;
        this.bookTitle = bookTitle;
    }

    Map<String, Object> values() {
        List<Map<String, Object>> sheets = new ArrayList<>();
        List<List<Mark>> byPage = pages.byPage();
        Mark part = null;
        String running = "";
        RunsOn open = RunsOn.NOTHING;
        for (int page = 0; page < pages.count(); page++) {
            List<Mark> here = byPage.get(page);
            Optional<Mark> opened = here.stream().filter(mark -> mark.kind() == Kind.PART).reduce((a, b) -> b);
            List<Mark> coins = here.stream().filter(Heads::names).toList();
            part = opened.orElse(part);
            running = opened.map(Mark::head).orElse(running);
            String head = coins.isEmpty() ? running : coins.get(0).head();
            Map<String, Object> sheet = sheet(page, part, opened.isPresent() && !goesOn(page), head, here);
            RunsOn fromBefore = here.isEmpty() || here.get(0).kind() != Kind.COIN ? RunsOn.NOTHING : open;
            sheet.put("continuedNumbers", fromBefore.numbers());
            sheet.put("continued", fromBefore.words());
            sheets.add(sheet);
            open = here.stream().filter(mark -> mark.kind() == Kind.ENTRY).map(Mark::runsOn).reduce(open, (a, b) -> b);
            running = coins.isEmpty() ? running : coins.get(coins.size() - 1).head();
        }
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("sheets", sheets);
        return values;
    }

    private boolean goesOn(int page) {
        return pages.amid() && pages.blank().size() == page;
    }

    /** Entries and coins know mint and ruler together; a heading alone knows one of them. */
    private static boolean names(Mark mark) {
        return mark.kind() == Kind.ENTRY || mark.kind() == Kind.COIN;
    }

    private Map<String, Object> sheet(int page, Mark part, boolean opening, String head, List<Mark> here) {
        List<String> numbers = here.stream().map(Mark::number).filter(n -> !n.isEmpty()).toList();
        boolean right = (page + pages.before()) % 2 == 0;
        Map<String, Object> sheet = new LinkedHashMap<>();
        sheet.put("side", right ? "right" : "left");
        sheet.put("kind", pages.blank().contains(page) ? "blank" : part == null ? "text" : kinds.get(part.id()));
        sheet.put("opening", opening);
        sheet.put("book", bookTitle);
        sheet.put("head", head);
        sheet.put("first", numbers.isEmpty() ? "" : numbers.get(0));
        sheet.put("last", numbers.isEmpty() ? "" : numbers.get(numbers.size() - 1));
        sheet.put("folio", pages.folio(page));
        return sheet;
    }
}
