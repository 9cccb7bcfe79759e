package exergue.cite;

import de.undercouch.citeproc.csl.CSLItemData;
import exergue.model.WorkItem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A work in the words of the model to one in the words of the library. */
final class Items {

    private Items() { }

    /** @param language of the book: "en" */
    static CSLItemData of(String id, WorkItem item, String language) {
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("id", id);
        data.put("type", CslTypes.of(item.type()));
        item.texts().forEach((variable, text) -> data.put(variable, Markers.ofMarkup(text.value())));
        item.text("edition").ifPresent(edition -> data.put("edition", Ordinals.of(edition, language)));
        item.people().forEach((variable, people) -> data.put(variable, people.stream().map(Items::name).toList()));
        item.dates().forEach((variable, date) -> data.put(variable, date(date)));
        return CSLItemData.fromJson(data);
    }

    private static Map<String, Object> name(WorkItem.Person person) {
        Map<String, Object> name = new LinkedHashMap<>();
        put(name, "family", person.family());
        put(name, "given", person.given());
        put(name, "non-dropping-particle", person.particle());
        put(name, "suffix", person.suffix());
        put(name, "literal", person.literal());
        return name;
    }

    private static void put(Map<String, Object> name, String part, String words) {
        if (!words.isBlank()) {
            name.put(part, Markers.ofMarkup(words));
        }
    }

    private static Map<String, Object> date(WorkItem.Date date) {
        Map<String, Object> data = new LinkedHashMap<>();
        if (date.parts().isEmpty()) {
            data.put("literal", Markers.ofMarkup(date.literal()));
        } else {
            List<List<Integer>> parts = new ArrayList<>(date.parts());
            data.put("date-parts", parts);
        }
        if (date.circa()) {
            data.put("circa", true);
        }
        return data;
    }
}
