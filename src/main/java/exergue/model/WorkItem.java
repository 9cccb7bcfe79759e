package exergue.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A work as reference managers know it, in the words of the Citation Style Language 1.0.2.
 *
 * @param type   "book", "article-journal", "chapter" and so on
 * @param texts  variables that are text or numbers: "title", "container-title", "page"
 * @param people variables that are names: "author", "editor"
 * @param dates  variables that are dates: "issued"
 */
public record WorkItem(String type, Map<String, Written<String>> texts, Map<String, List<Person>> people,
                       Map<String, Date> dates) {

    public WorkItem {
        texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
        people = Collections.unmodifiableMap(new LinkedHashMap<>(people));
        dates = Collections.unmodifiableMap(new LinkedHashMap<>(dates));
    }

    /**
     * A name in its parts; those there are none of are empty.
     *
     * @param particle that stays with the family name: "de", "von"
     * @param literal  the whole name of a body that has no parts: "Aldmoor Museum"
     */
    public record Person(String family, String given, String particle, String suffix, String literal) {

        public static Person body(String name) {
            return new Person("", "", "", "", name);
        }

        /** As a sign would have it: the family name with its particle, or the body. */
        public String shortName() {
            return literal.isEmpty() ? (particle + " " + family).strip() : literal;
        }
    }

    /**
     * A date or a span of dates.
     *
     * @param parts   one list for a date, two for a span, each of year, month, day as far as known
     * @param literal a date in words, where there are no parts
     */
    public record Date(List<List<Integer>> parts, String literal, boolean circa) {

        public Date {
            parts = parts.stream().map(List::copyOf).toList();
        }

        public static Date year(int year) {
            return new Date(List.of(List.of(year)), "", false);
        }

        /** The year, or the words there are instead. */
        public String shortForm() {
            return parts.isEmpty() || parts.get(0).isEmpty() ? literal : String.valueOf(parts.get(0).get(0));
        }
    }

    public Optional<String> text(String variable) {
        return Optional.ofNullable(texts.get(variable)).map(Written::value);
    }

    /** Those first named: authors, else editors. */
    public List<Person> first() {
        return people.getOrDefault("author", people.getOrDefault("editor", List.of()));
    }
}
