package exergue.review.content;

import exergue.model.Catalogue;
import exergue.model.NaturalOrder;
import exergue.model.Written;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A catalogue as sections of entries by their ids. What the catalogue has one of, such as its house style, is a section
 * of one entry without an id.
 *
 * @param sections entries in natural order of their ids
 */
public record Contents(SortedMap<Section, Map<String, Object>> sections, Map<Section, List<String>> orders) {

    /** Sections whose entries the book prints in the order of their file. */
    private static final Set<String> IN_ORDER = Set.of("mints", "rulers", "findSpots", "collections");

    public Contents {
        sections = Collections.unmodifiableSortedMap(new TreeMap<>(sections));
        orders = Collections.unmodifiableMap(new LinkedHashMap<>(orders));
    }

    public static Contents of(Catalogue catalogue) {
        SortedMap<Section, Map<String, Object>> sections = new TreeMap<>();
        Map<Section, List<String>> orders = new LinkedHashMap<>();
        for (Components component : Components.of(catalogue)) {
            Section section = Section.of(component.name());
            Object value = component.in(catalogue);
            sections.put(section, entries(value));
            if (IN_ORDER.contains(component.name()) && value instanceof Map<?, ?> map) {
                orders.put(section, map.keySet().stream().map(String::valueOf).toList());
            }
        }
        return new Contents(sections, orders);
    }

    private static Map<String, Object> entries(Object value) {
        Map<String, Object> entries = new LinkedHashMap<>();
        if (value instanceof Map<?, ?> map) {
            map.entrySet().stream().sorted(Comparator.comparing(entry -> entry.getKey().toString(), NaturalOrder.INSTANCE))
                    .forEach(entry -> entries.put(entry.getKey().toString(),
                            entry.getValue() instanceof Written<?> written ? written.value() : entry.getValue()));
        } else if (value instanceof List<?> list) {
            list.forEach(entry -> put(id(entry), entry, entries)); // types and coins come sorted
        } else if (!(value instanceof Optional<?> maybe) || maybe.isPresent()) {
            entries.put("", value instanceof Optional<?> maybe ? maybe.orElseThrow() : value);
        }
        return entries;
    }

    private static String id(Object entry) {
        Optional<String> id = entry instanceof Record record ? Components.of(record).stream()
                .filter(component -> component.name().equals("id")).map(component -> RecordText.of(component.in(record))).findFirst()
                : Optional.empty();
        return id.orElseGet(() -> RecordText.of(entry));
    }

    /** Two entries of one id are a fault of the source that is told of elsewhere; here neither may hide the other. */
    private static void put(String id, Object entry, Map<String, Object> into) {
        String free = id;
        for (int nth = 2; into.putIfAbsent(free, entry) != null; nth++) {
            free = id + " (" + nth + ")";
        }
    }

    /** By id, in natural order; empty where the catalogue has none. */
    public Map<String, Object> in(Section section) {
        return sections.getOrDefault(section, Map.of());
    }

    /** The same with a section more. */
    public Contents with(Section section, Map<String, Object> entries) {
        SortedMap<Section, Map<String, Object>> more = new TreeMap<>(sections);
        more.put(section, Collections.unmodifiableMap(new LinkedHashMap<>(entries)));
        return new Contents(more, orders);
    }
}
