package exergue.source.keys;

import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Measurement;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Fields;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.Texts;
import exergue.source.yaml.Scalar;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** {@code measured}, and each member of {@code also-measured}. */
final class MeasurementKeys {

    private static final Keys KEYS = new Keys("a measurement");

    private static final Key<Written<String>> BY = KEYS.mustName("by", Texts.ID, desk -> desk.conventions().keySet(),
            "The measuring convention the readings were taken under, from conventions.yaml.", "bench-2024");

    private static final Map<Kind, Key<Optional<Scalar>>> READINGS = new EnumMap<>(Kind.class);

    static {
        reading(Kind.WEIGHT, "Weight with its unit; or, in quotation marks, \"missing: why\", \"not applicable: why\", \"illegible: why\".", "3.87 g");
        reading(Kind.DIAMETER, "Diameter with its unit, two figures for a flan that is not round; or why there is none.",
                "18 x 17 mm");
        reading(Kind.AXIS, "Die-axis in hours, degrees or as an arrow; or why there is none.", "6 h");
        reading(Kind.THICKNESS, "Thickness with its unit; or why there is none.", "2.1 mm");
        reading(Kind.DENSITY, "Density (specific gravity): the weight in air, the weight in water and the temperature of the water, "
                + "or the figure that the source worked out. How to weigh safely: docs/measuring.md.",
                "\"14.103 g in air, 13.081 g in water, 20 °C\"");
        reading(Kind.SURFACE, "Surface of one side with its unit, as measured on a scaled photograph.", "254 mm²");
    }

    static final Block<Measurement> BLOCK = KEYS.block(MeasurementKeys::bind);

    private MeasurementKeys() { }

    private static void reading(Kind kind, String about, String example) {
        READINGS.put(kind, KEYS.may(kind.word(), Texts.READING, about, example));
    }

    private static Measurement bind(Fields fields) {
        Written<String> by = fields.get(BY);
        Convention convention = fields.site().desk().convention(by.value());
        Map<Kind, Written<Reading>> readings = new EnumMap<>(Kind.class);
        Map<Kind, Written<String>> unread = new EnumMap<>(Kind.class);
        READINGS.forEach((kind, key) -> fields.get(key).ifPresent(text ->
                Readings.read(kind, text, convention, fields.site().at(key.name()))
                        .ifPresentOrElse(reading -> readings.put(kind, reading),
                                () -> unread.put(kind, new Written<>(text.text(), text.place())))));
        return new Measurement(by, convention, readings, unread, fields.place());
    }
}
