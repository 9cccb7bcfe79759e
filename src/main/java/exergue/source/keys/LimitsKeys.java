package exergue.source.keys;

import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Limits;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Fields;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.Text;
import exergue.source.shape.Texts;
import exergue.source.yaml.Scalar;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code limits} of a type: what its author expects of a coin. */
final class LimitsKeys {

    /** A reading that must be there; where it is not, there is no limit. */
    static final Text<Optional<Scalar>> LIMIT = new Text<>(Texts.READING.name(), List.of(), "", false,
            (scalar, site) -> Optional.of(Optional.of(scalar)), (site, place) -> Optional.empty());

    private static final Keys KEYS = new Keys("the limits of a type");

    private static final Key<Optional<Optional<Limits.Span>>> WEIGHT = KEYS.may("weight", span(Kind.WEIGHT, "3.4 g", "4.1 g"),
            "Least and greatest weight expected of a whole coin.", "");
    private static final Key<Optional<Optional<Limits.Span>>> DIAMETER = KEYS.may("diameter", span(Kind.DIAMETER, "16 mm", "20 mm"),
            "Least and greatest diameter expected.", "");

    static final Block<Limits> BLOCK = KEYS.block(LimitsKeys::bind);

    private LimitsKeys() { }

    private static Limits bind(Fields fields) {
        Map<Kind, Limits.Span> spans = new EnumMap<>(Kind.class);
        fields.get(WEIGHT).flatMap(span -> span).ifPresent(span -> spans.put(Kind.WEIGHT, span));
        fields.get(DIAMETER).flatMap(span -> span).ifPresent(span -> spans.put(Kind.DIAMETER, span));
        return new Limits(spans);
    }

    private static Block<Optional<Limits.Span>> span(Kind kind, String least, String greatest) {
        Keys keys = new Keys("limits");
        Key<Optional<Scalar>> from = keys.must("from", LIMIT, "The least, with its unit.", least);
        Key<Optional<Scalar>> to = keys.must("to", LIMIT, "The greatest, with its unit.", greatest);
        return keys.block(fields -> {
            Optional<Written<Reading>> lower = limit(kind, fields.get(from), fields, from);
            Optional<Written<Reading>> upper = limit(kind, fields.get(to), fields, to);
            return lower.isPresent() && upper.isPresent()
                    ? Optional.of(new Limits.Span(lower.get(), upper.get())) : Optional.empty();
        });
    }

    static Optional<Written<Reading>> limit(Kind kind, Optional<Scalar> text, Fields fields, Key<?> key) {
        return text.flatMap(t -> Readings.read(kind, t, Convention.UNDECLARED, fields.site().at(key.name())));
    }
}
