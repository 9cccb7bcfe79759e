package exergue.typeset;

import exergue.edition.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The lists of plates, tables and figures as what templates see. */
final class ListValues {

    private final Markup markup;
    private final List<Map<String, Object>> lines = new ArrayList<>();

    ListValues(Markup markup) {
        this.markup = markup;
    }

    List<Map<String, Object>> of(Part.Lists part) {
        List<Map<String, Object>> values = new ArrayList<>();
        for (Part.ListedThings list : part.lists()) {
            Map<String, Object> value = new LinkedHashMap<>();
            value.put("heading", list.heading());
            value.put("lines", list.things().stream().map(this::line).toList());
            values.add(value);
        }
        return values;
    }

    private Map<String, Object> line(Part.Listed thing) {
        Map<String, Object> line = new LinkedHashMap<>();
        line.put("to", thing.anchor());
        line.put("label", thing.label());
        line.put("words", BookValues.finished(markup.of(thing.words())));
        lines.add(line);
        return line;
    }

    /** Once all parts are known. @param roman anchors on pages with roman folios */
    void tellFolios(Set<String> roman) {
        lines.forEach(line -> line.put("roman", roman.contains(line.get("to").toString())));
    }
}
