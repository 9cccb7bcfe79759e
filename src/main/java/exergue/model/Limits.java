package exergue.model;

import exergue.measure.Kind;
import exergue.measure.Reading;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/** What the author expects of a type: least and greatest, both read as readings in normal units. */
public record Limits(Map<Kind, Span> spans) {

    public Limits {
        spans = spans.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(spans));
    }

    public record Span(Written<Reading> from, Written<Reading> to) { }
}
