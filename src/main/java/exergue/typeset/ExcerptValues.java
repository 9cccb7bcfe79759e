package exergue.typeset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What {@code book.ftlh} sees of a stretch of the book: of the entries of its one part only those. */
final class ExcerptValues {

    private ExcerptValues() { }

    /** @param book what it would see of the part as a whole */
    static Map<String, Object> of(Map<String, Object> book, Excerpt excerpt) {
        Map<String, Object> values = new LinkedHashMap<>(book);
        List<Map<String, Object>> body = new ArrayList<>();
        if (excerpt.blank() > 1) {
            body.add(Map.of("kind", "blank", "anchor", "before", "plainHeading", "", "prose", BookValues.finished(""), "blankBefore", true));
        }
        parts(book).forEach(part -> body.add(part(part, excerpt)));
        values.put("body", body);
        values.put("blankBeforeBody", false);
        values.put("trial", true);
        return values;
    }

    @SuppressWarnings("unchecked") // as BookValues makes them
    private static List<Map<String, Object>> parts(Map<String, Object> book) {
        return (List<Map<String, Object>>) book.get("body");
    }

    private static Map<String, Object> part(Map<String, Object> whole, Excerpt excerpt) {
        Map<String, Object> part = new LinkedHashMap<>(whole);
        part.put("blankBefore", excerpt.blank() == 1);
        if (excerpt.isAmid()) {
            part.put("plainHeading", "");
        }
        if (whole.get("blocks") instanceof List<?> blocks) {
            part.put("blocks", blocks.subList(Math.min(excerpt.from(), blocks.size()), Math.min(excerpt.to(), blocks.size())));
        }
        return part;
    }
}
