package exergue.model;

import exergue.finding.Place;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Reading;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What one hand measured on one coin.
 *
 * @param by         the convention as the entry names it
 * @param convention what that name stands for; {@link Convention#UNDECLARED} where it is not declared
 * @param readings   only the kinds the entry gives and that could be read
 * @param unread     the words of the entry, for kinds it gives in words that could not be read
 * @param place      of the whole block
 */
public record Measurement(Written<String> by, Convention convention, Map<Kind, Written<Reading>> readings,
                          Map<Kind, Written<String>> unread, Place place) {

    public Measurement {
        readings = readings.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(readings));
        unread = unread.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(unread));
    }

    /** A measurement of which everything could be read. */
    public Measurement(Written<String> by, Convention convention, Map<Kind, Written<Reading>> readings, Place place) {
        this(by, convention, readings, Map.of(), place);
    }

    /** True where the entry gives something of this kind, whether or not it could be read. */
    public boolean mentions(Kind kind) {
        return readings.containsKey(kind) || unread.containsKey(kind);
    }

    public Optional<Written<Reading>> reading(Kind kind) {
        return Optional.ofNullable(readings.get(kind));
    }
}
