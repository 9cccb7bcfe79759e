package exergue.exchange;

import com.fasterxml.jackson.core.JsonGenerator;
import exergue.edition.DataRow;
import exergue.edition.DataRow.Figure;
import exergue.measure.Kind;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A coin as JSON-LD in the vocabulary of schema.org, for its page. A coin is both a work (CreativeWork) and one single
 * thing (IndividualProduct, which nothing says is for sale); only the latter may have an additionalProperty, in which
 * every figure stands with its unit's common code (UN/CEFACT Recommendation 20: GRM, MMT, MMK; 23 for grams a cubic
 * centimetre). A die-axis in hours has no such code and says its unit in words.
 */
public final class CoinLinkedData {

    private CoinLinkedData() { }

    /** One JSON text that can stand in a page: without {@code <}. */
    public static String of(DataRow row) {
        return JsonText.of(json -> write(row, json)).replace("<", "\\u003c").strip();
    }

    private static void write(DataRow row, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("@context", "https://schema.org");
        json.writeArrayFieldStart("@type");
        json.writeString("CreativeWork");
        json.writeString("IndividualProduct");
        json.writeEndArray();
        json.writeStringField("@id", "#" + row.id());
        json.writeStringField("identifier", row.id());
        json.writeStringField("name", row.denomination());
        json.writeStringField("position", row.number());
        json.writeStringField("material", row.metal());
        json.writeObjectFieldStart("isPartOf");
        json.writeStringField("@type", "Book");
        json.writeStringField("@id", "../index.html");
        json.writeEndObject();
        json.writeArrayFieldStart("additionalProperty");
        for (Figure figure : row.figures()) {
            figure(figure, json);
        }
        words("measurement-line", Optional.of(row.line()), json);
        words("type", Optional.of(row.type()), json);
        words("mint", Optional.of(row.mint()), json);
        words("ruler", row.ruler(), json);
        words("collection", row.collection(), json);
        words("find-spot", row.findSpot(), json);
        words("page", row.page(), json);
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void figure(Figure figure, JsonGenerator json) throws IOException {
        if (figure.values().isEmpty()) {
            return;
        }
        json.writeStartObject();
        json.writeStringField("@type", "PropertyValue");
        json.writeStringField("name", figure.kind().word());
        value(figure.values(), json);
        Optional<String> code = code(figure.kind());
        json.writeStringField(code.isPresent() ? "unitCode" : "unitText", code.orElse(figure.unit()));
        json.writeEndObject();
    }

    private static void value(List<BigDecimal> values, JsonGenerator json) throws IOException {
        json.writeFieldName("value");
        if (values.size() > 1) {
            json.writeStartArray();
        }
        for (BigDecimal value : values) {
            json.writeNumber(value.toPlainString());
        }
        if (values.size() > 1) {
            json.writeEndArray();
        }
    }

    private static void words(String name, Optional<String> value, JsonGenerator json) throws IOException {
        if (value.filter(text -> !text.isEmpty()).isPresent()) {
            json.writeStartObject();
            json.writeStringField("@type", "PropertyValue");
            json.writeStringField("name", name);
            json.writeStringField("value", value.get());
            json.writeEndObject();
        }
    }

    private static Optional<String> code(Kind kind) {
        return switch (kind) {
            case WEIGHT -> Optional.of("GRM");
            case DIAMETER, THICKNESS -> Optional.of("MMT");
            case SURFACE -> Optional.of("MMK");
            case DENSITY -> Optional.of("23");
            case AXIS -> Optional.empty();
        };
    }
}
