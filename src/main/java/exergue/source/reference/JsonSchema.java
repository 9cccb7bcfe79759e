package exergue.source.reference;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import exergue.source.keys.FileKind;
import exergue.source.shape.Block;
import exergue.source.shape.Key;
import exergue.source.shape.ListOf;
import exergue.source.shape.MapOf;
import exergue.source.shape.Text;
import exergue.source.shape.TextOr;
import exergue.source.shape.Texts;
import exergue.source.shape.Wanted;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * docs/schema/&lt;kind&gt;.schema.json: JSON Schemas (2020-12) from the same descriptions that read files, so that
 * editors complete and check keys while an entry is typed.
 */
public final class JsonSchema {

    private final JsonGenerator json;

    private JsonSchema(JsonGenerator json) {
        this.json = json;
    }

    /** The schema of one kind of file, as text. */
    public static String of(FileKind<?> kind) {
        StringWriter text = new StringWriter();
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter layout = new DefaultPrettyPrinter().withObjectIndenter(lines);
        try (JsonGenerator json = new JsonFactory().createGenerator(text).setPrettyPrinter(layout)) {
            new JsonSchema(json).file(kind);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.append('\n').toString();
    }

    private void file(FileKind<?> kind) throws IOException {
        json.writeStartObject();
        json.writeStringField("$schema", "https://json-schema.org/draft/2020-12/schema");
        json.writeStringField("title", kind.isFolder() ? kind.where() + "<id>.yaml" : kind.where());
        json.writeStringField("description", kind.about());
        wanted(kind.wanted());
        json.writeEndObject();
    }

    private void wanted(Wanted<?> wanted) throws IOException {
        if (wanted instanceof Block<?> block) {
            block(block);
        } else if (wanted instanceof MapOf<?> map) {
            json.writeStringField("type", "object");
            propertyNames(map.ids());
            json.writeObjectFieldStart("additionalProperties");
            wanted(map.member());
            json.writeEndObject();
        } else if (wanted instanceof ListOf<?> list) {
            json.writeStringField("type", "array");
            json.writeObjectFieldStart("items");
            wanted(list.member());
            json.writeEndObject();
        } else if (wanted instanceof TextOr<?> either) {
            json.writeArrayFieldStart("anyOf");
            json.writeStartObject();
            text(either.text());
            json.writeEndObject();
            json.writeStartObject();
            block(either.block());
            json.writeEndObject();
            json.writeEndArray();
        } else {
            text((Text<?>) wanted);
        }
    }

    private void propertyNames(Text<?> ids) throws IOException {
        if (ids.words().isEmpty() && ids.pattern().isEmpty()) {
            return;
        }
        json.writeObjectFieldStart("propertyNames");
        if (ids.words().isEmpty()) {
            json.writeStringField("pattern", whole(Texts.ID.pattern()));
        } else {
            words(ids.words());
        }
        json.writeEndObject();
    }

    private void block(Block<?> block) throws IOException {
        json.writeStringField("type", "object");
        json.writeObjectFieldStart("properties");
        for (Key<?> key : block.keys()) {
            json.writeObjectFieldStart(key.name());
            json.writeStringField("description", key.about());
            if (key.wanted() instanceof Text<?> && key.unlessWritten() != null && !key.unlessWritten().isEmpty()) {
                json.writeStringField("default", key.unlessWritten());
            }
            wanted(key.wanted());
            json.writeEndObject();
        }
        json.writeEndObject();
        List<String> must = block.keys().stream().filter(Key::must).map(Key::name).toList();
        if (!must.isEmpty()) {
            strings("required", must);
        }
        json.writeBooleanField("additionalProperties", false);
    }

    /** Editors read 1931 as a number and yes as a truth value before they ask the schema, so both are let in. */
    private void text(Text<?> text) throws IOException {
        if (text == Texts.YES_OR_NO) {
            json.writeArrayFieldStart("enum");
            json.writeString("yes");
            json.writeString("no");
            json.writeBoolean(true);
            json.writeBoolean(false);
            json.writeEndArray();
        } else if (!text.words().isEmpty()) {
            words(text.words());
        } else if (text == Texts.WHOLE_NUMBER || text == Texts.DECIMALS) {
            json.writeStringField("type", "integer");
            json.writeNumberField("minimum", 0);
        } else {
            strings("type", List.of("string", "number"));
            if (!text.pattern().isEmpty()) {
                json.writeStringField("pattern", whole(text.pattern()));
            }
        }
    }

    /** Some editors read off as a truth value too. */
    private void words(List<String> words) throws IOException {
        json.writeArrayFieldStart("enum");
        for (String word : words) {
            json.writeString(word);
        }
        if (words.contains("off")) {
            json.writeBoolean(false);
        }
        json.writeEndArray();
    }

    private void strings(String field, List<String> values) throws IOException {
        json.writeArrayFieldStart(field);
        for (String value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }

    private static String whole(String pattern) {
        return "^(" + pattern + ")$";
    }
}
