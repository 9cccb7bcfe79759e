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
 * @param place      of the whole block
 */
public record Measurement(Written<String> by, Convention convention, Map<Kind, Written<Reading>> readings,
                          Place place) {

    public Measurement {
        readings = readings.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(readings));
    }

    public Optional<Written<Reading>> reading(Kind kind) {
        return Optional.ofNullable(readings.get(kind));
    }
}
