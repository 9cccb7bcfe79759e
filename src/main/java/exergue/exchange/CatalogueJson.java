package exergue.exchange;

import com.fasterxml.jackson.core.JsonGenerator;
import exergue.edition.DataRow;
import exergue.edition.DataRow.Figure;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * The catalogue's data as JSON: {@code {"source-commit", "coins": [{"id", "number", "type", "mint", "ruler", "denomination", "metal",
 * "date": {"edtf", "printed"}, "era-date", "obverse-legend", "reverse-legend",
 * "weight": {"status", "why", "by", "recorded", "values", "unit", "printed"}, "diameter", "axis", …,
 * "fineness", "other-hands": [{"what", "by", "recorded", "values", "unit"}],
 * "measurement-line", "damage", "weight-counts", "collection", "find-spot", "page"}]}}. Values are exact numbers in
 * the unit named beside them, never rounded; {@code printed} is what the book says. What there is not is left out.
 */
public final class CatalogueJson {

    private CatalogueJson() { }

    /** One JSON text for all rows, in their order. */
    public static String of(List<DataRow> rows) {
        return of(rows, Optional.empty());
    }

    /** @param commit that the source was at, if it is known */
    public static String of(List<DataRow> rows, Optional<String> commit) {
        return JsonText.of(json -> {
            json.writeStartObject();
            write("source-commit", commit, json);
            json.writeArrayFieldStart("coins");
            for (DataRow row : rows) {
                write(row, json);
            }
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    private static void write(DataRow row, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", row.id());
        json.writeStringField("number", row.number());
        json.writeStringField("type", row.type());
        json.writeStringField("mint", row.mint());
        write("ruler", row.ruler(), json);
        json.writeStringField("denomination", row.denomination());
        json.writeStringField("metal", row.metal());
        write(row.struck(), json);
        for (Figure figure : row.figures()) {
            write(figure, json);
        }
        write("fineness", row.fineness(), json);
        json.writeArrayFieldStart("other-hands");
        for (DataRow.Other other : row.others()) {
            write(other, json);
        }
        json.writeEndArray();
        json.writeStringField("measurement-line", row.line());
        json.writeArrayFieldStart("damage");
        for (String damage : row.damage()) {
            json.writeString(damage);
        }
        json.writeEndArray();
        json.writeBooleanField("weight-counts", row.weightCounts());
        write("collection", row.collection(), json);
        write("find-spot", row.findSpot(), json);
        write("page", row.page(), json);
        json.writeEndObject();
    }

    private static void write(DataRow.Struck struck, JsonGenerator json) throws IOException {
        if (struck.date().isPresent()) {
            json.writeObjectFieldStart("date");
            json.writeStringField("edtf", struck.date().get().edtf());
            json.writeStringField("printed", struck.date().get().printed());
            json.writeEndObject();
        }
        write("era-date", struck.eraDate(), json);
        write("obverse-legend", struck.obverseLegend(), json);
        write("reverse-legend", struck.reverseLegend(), json);
    }

    private static void write(Figure figure, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart(figure.kind().word());
        json.writeStringField("status", figure.status());
        write("why", figure.why(), json);
        write("by", figure.convention(), json);
        json.writeStringField("recorded", figure.recorded());
        write(figure.values(), figure.unit(), json);
        json.writeStringField("printed", figure.printed());
        json.writeEndObject();
    }

    private static void write(DataRow.Other other, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("what", other.kind().word());
        json.writeStringField("by", other.convention());
        json.writeStringField("recorded", other.recorded());
        write(other.values(), other.unit(), json);
        json.writeEndObject();
    }

    private static void write(List<BigDecimal> values, String unit, JsonGenerator json) throws IOException {
        if (!values.isEmpty()) {
            json.writeArrayFieldStart("values");
            for (BigDecimal value : values) {
                json.writeNumber(value.toPlainString());
            }
            json.writeEndArray();
            json.writeStringField("unit", unit);
        }
    }

    private static void write(String name, Optional<String> value, JsonGenerator json) throws IOException {
        if (value.isPresent()) {
            json.writeStringField(name, value.get());
        }
    }
}
