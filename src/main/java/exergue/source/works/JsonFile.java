package exergue.source.works;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.source.text.Notebook;
import exergue.source.text.SourceText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Text to JSON with places. A fault ends the reading and is reported where it was met. */
final class JsonFile {

    /** Deeper than any reference manager nests, and no danger to the stack. */
    private static final int DEEPEST = 50;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

    private final SourceText text;

    private JsonFile(SourceText text) {
        this.text = text;
    }

    static Optional<Json> read(SourceText text, Notebook notebook) {
        JsonFile file = new JsonFile(text);
        try (JsonParser parser = FACTORY.createParser(text.text())) {
            if (parser.nextToken() == null) {
                return Optional.of(new Json.Many(List.of(), Place.ofFile(text.file())));
            }
            Json whole = file.value(parser);
            parser.nextToken();
            return Optional.of(whole);
        } catch (JsonProcessingException fault) {
            notebook.add(file.said(fault));
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot fail to be read", e);
        }
    }

    private Json value(JsonParser parser) throws IOException {
        Place place = place(parser);
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            Map<String, Json> values = new LinkedHashMap<>();
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String key = parser.currentName();
                parser.nextToken();
                values.put(key, value(parser));
            }
            return new Json.Pairs(values, place);
        }
        if (token == JsonToken.START_ARRAY) {
            List<Json> members = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                members.add(value(parser));
            }
            return new Json.Many(members, place);
        }
        return token == JsonToken.VALUE_NULL ? new Json.None(place)
                : new Json.Plain(text.composed(parser.getText()), place);
    }

    private Place place(JsonParser parser) {
        long from = parser.currentTokenLocation().getCharOffset();
        return text.place((int) from, Math.max(1, parser.currentToken().isScalarValue()
                ? (int) (parser.currentLocation().getCharOffset() - from) : 1));
    }

    private Finding said(JsonProcessingException fault) {
        int at = fault.getLocation() == null ? 0 : (int) Math.max(0, fault.getLocation().getCharOffset());
        int here = Math.min(at, Math.max(0, text.text().length() - 1));
        Place place = text.place(here, 1);
        if (fault instanceof StreamConstraintsException) {
            return Finding.of(WorksCodes.NOT_JSON, place, "", "Brackets stand here within brackets within brackets, more than "
                    + DEEPEST + " deep; no list of works does that.", "Export the works anew from your reference manager.");
        }
        if (fault instanceof JsonEOFException) {
            return Finding.of(WorksCodes.NOT_JSON, place, "",
                    "The file ends before everything that was opened in it is closed again.",
                    "Look for a missing quotation mark, } or ]. If the file was cut off, export it anew.");
        }
        if (String.valueOf(fault.getOriginalMessage()).startsWith("Duplicate field")) {
            return Finding.of(WorksCodes.NOT_JSON, place, "", "The same name stands twice in this work.",
                    "Keep one of the two.");
        }
        String seen = text.text().substring(here, text.text().offsetByCodePoints(here, 1)).strip();
        return Finding.of(WorksCodes.NOT_JSON, place, "",
                (seen.isEmpty() ? "Here" : "At “" + seen + "”") + " this stops being JSON.",
                "Look at this line and the one before: a comma is missing or too many, or a name or text has no quotation marks "
                        + "around it. If the file was never changed by hand, export it anew as CSL-JSON.");
    }
}
