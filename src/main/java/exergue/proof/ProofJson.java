package exergue.proof;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import exergue.edition.HeldTogether;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Severity;
import exergue.proof.Finder.Hit;
import exergue.typeset.Area;
import exergue.typeset.DrawnPages.Line;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What there is to see, as the page's script reads it. Places on a leaf are ten-thousandths of its width or height. */
final class ProofJson {

    private static final JsonFactory FACTORY = new JsonFactory();

    private interface Content {
        void writeTo(JsonGenerator json) throws IOException;
    }

    private ProofJson() { }

    private static String of(Content content) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.writeStartObject();
            content.writeTo(json);
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a string writer has no disk to fail
        }
        return text.toString();
    }

    /** @param sheet width and height of a page, in points */
    static String now(Proof proof, List<Integer> sheet) {
        Map<String, Integer> leaves = proof.firstLeaves();
        return of(json -> {
            json.writeNumberField("number", proof.number());
            json.writeNumberField("change", proof.change());
            json.writeStringField("state", proof.state().word());
            json.writeStringField("title", proof.title());
            json.writeStringField("changed", proof.changed().orElse(""));
            json.writeStringField("doing", proof.doing());
            json.writeStringField("trouble", proof.trouble().orElse(""));
            json.writeNumberField("errors", proof.findings().count(Severity.ERROR));
            json.writeNumberField("warnings", proof.findings().count(Severity.WARNING));
            numbers("sheet", sheet, json);
            json.writeArrayFieldStart("leaves");
            for (Leaf leaf : proof.leaves()) {
                json.writeStartObject();
                json.writeStringField("name", leaf.name());
                json.writeStringField("folio", leaf.folio());
                json.writeBooleanField("fresh", leaf.fresh());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("entries");
            for (Known entry : proof.entries()) {
                write(entry, leaves.getOrDefault(entry.anchor(), -1), json);
            }
            json.writeEndArray();
            findings(proof, json);
        });
    }

    private static void write(Known entry, int leaf, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("anchor", entry.anchor());
        json.writeStringField("entry", entry.entry());
        json.writeStringField("number", entry.number());
        json.writeStringField("id", entry.id());
        json.writeStringField("words", HeldTogether.noBreak(entry.words()));
        json.writeStringField("file", entry.place().file());
        json.writeNumberField("line", Math.max(1, entry.place().line()));
        json.writeNumberField("leaf", leaf);
        json.writeEndObject();
    }

    private static void findings(Proof proof, JsonGenerator json) throws IOException {
        Map<String, String> anchors = new HashMap<>();
        proof.entries().forEach(entry -> anchors.putIfAbsent(entry.place().file(), entry.anchor()));
        json.writeArrayFieldStart("findings");
        for (Finding finding : worstFirst(proof.findings())) {
            json.writeStartObject();
            json.writeStringField("severity", finding.severity().word());
            json.writeStringField("code", finding.code().id());
            json.writeStringField("what", finding.what());
            json.writeStringField("remedy", finding.remedy());
            json.writeStringField("file", finding.place().file());
            json.writeNumberField("line", finding.place().line());
            json.writeNumberField("column", finding.place().column());
            json.writeStringField("anchor", anchors.getOrDefault(finding.place().file(), ""));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** What keeps the book from being set is not to be looked for among notes. */
    static List<Finding> worstFirst(Findings findings) {
        return findings.all().stream().sorted(Comparator.comparing(Finding::severity).thenComparing(Comparator.naturalOrder())).toList();
    }

    static String leaf(Leaf leaf, List<Line> lines) {
        return of(json -> {
            json.writeArrayFieldStart("areas");
            for (Area area : leaf.areas()) {
                json.writeStartObject();
                json.writeStringField("anchor", area.anchor());
                place(List.of(area.left(), area.top(), area.right(), area.bottom()), json);
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("lines");
            for (Line line : lines) {
                json.writeStartObject();
                write(line, json);
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    private static void write(Line line, JsonGenerator json) throws IOException {
        json.writeStringField("text", line.text());
        place(List.of(line.left(), line.top(), line.right(), line.bottom()), json);
    }

    private static void place(List<Integer> edges, JsonGenerator json) throws IOException {
        numbers("at", edges, json);
    }

    private static void numbers(String name, List<Integer> numbers, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(name);
        for (int number : numbers) {
            json.writeNumber(number);
        }
        json.writeEndArray();
    }

    static String hits(Finder.Hits hits) {
        return of(json -> {
            json.writeNumberField("all", hits.all());
            json.writeArrayFieldStart("hits");
            for (Hit hit : hits.first()) {
                json.writeStartObject();
                json.writeNumberField("leaf", hit.leaf());
                json.writeStringField("anchor", hit.anchor());
                if (hit.line().isPresent()) {
                    write(hit.line().get(), json);
                } else {
                    json.writeStringField("text", hit.text());
                }
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }
}
