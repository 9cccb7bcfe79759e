package exergue.typeset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What {@code book.ftlh} sees of a stretch of the book: of the entries of its one part only those. */
final class ExcerptValues {

    private ExcerptValues() { }

    /** @param book what it would see of the part as a whole */
    static Map<String, Object> of(Map<String, Object> book, Excerpt excerpt) {
        Map<String, Object> values = new LinkedHashMap<>(book);
        values.put("body", parts(book).stream().map(part -> part(part, excerpt)).toList());
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
        part.put("blankBefore", excerpt.beginsOnLeft());
        if (excerpt.isAmid()) {
            part.put("plainHeading", "");
        }
        if (whole.get("blocks") instanceof List<?> blocks) {
            part.put("blocks", blocks.subList(Math.min(excerpt.from(), blocks.size()), Math.min(excerpt.to(), blocks.size())));
        }
        return part;
    }
}
