package exergue.cli.report;

import com.fasterxml.jackson.core.JsonGenerator;
import exergue.Exergue;
import exergue.exchange.JsonText;
import exergue.finding.Code;
import exergue.finding.Excused;
import exergue.finding.Finding;
import exergue.finding.Findings;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Findings as a log in the Static Analysis Results Interchange Format, version 2.1.0 (OASIS standard, 2020), with
 * one rule for each code that occurs.
 */
final class SarifReport {

    private static final String SCHEMA =
            "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    private SarifReport() { }

    static String render(Report report) {
        List<Code> rules = rules(report.findings());
        return JsonText.of(json -> {
            json.writeStartObject();
            json.writeStringField("$schema", SCHEMA);
            json.writeStringField("version", "2.1.0");
            json.writeArrayFieldStart("runs");
            json.writeStartObject();
            writeTool(rules, json);
            json.writeStringField("columnKind", "unicodeCodePoints");
            writeResults(report, rules, json);
            json.writeEndObject();
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    /** One for each code; an excused finding may weigh otherwise than its fellows, and then theirs counts. */
    private static List<Code> rules(Findings findings) {
        Map<String, Code> rules = new TreeMap<>();
        findings.all().forEach(finding -> rules.putIfAbsent(finding.code().id(), finding.code()));
        findings.excused().forEach(one -> rules.putIfAbsent(one.finding().code().id(), one.finding().code()));
        return List.copyOf(rules.values());
    }

    private static void writeTool(List<Code> rules, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart("tool");
        json.writeObjectFieldStart("driver");
        json.writeStringField("name", "Exergue");
        json.writeStringField("version", Exergue.VERSION);
        json.writeArrayFieldStart("rules");
        for (Code rule : rules) {
            json.writeStartObject();
            json.writeStringField("id", rule.id());
            writeText("shortDescription", rule.title() + ".", json);
            writeText("fullDescription", rule.why(), json);
            json.writeObjectFieldStart("help");
            json.writeStringField("text", rule.why() + "\n\nInstead of:\n" + rule.faulty()
                    + "\n\nwrite:\n" + rule.mended());
            json.writeEndObject();
            json.writeObjectFieldStart("defaultConfiguration");
            json.writeStringField("level", rule.severity().word());
            json.writeEndObject();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
        json.writeEndObject();
    }

    private static void writeResults(Report report, List<Code> rules, JsonGenerator json) throws IOException {
        List<String> ids = rules.stream().map(Code::id).toList();
        json.writeArrayFieldStart("results");
        for (Finding finding : report.findings().all()) {
            json.writeStartObject();
            writeResult(finding, ids, report, json);
            json.writeEndObject();
        }
        for (Excused excused : report.findings().excused()) {
            json.writeStartObject();
            writeResult(excused.finding(), ids, report, json);
            writeSuppression(excused, json);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void writeResult(Finding finding, List<String> ids, Report report, JsonGenerator json) throws IOException {
        SarifPlace places = new SarifPlace(report, json);
        json.writeStringField("ruleId", finding.code().id());
        json.writeNumberField("ruleIndex", ids.indexOf(finding.code().id()));
        json.writeStringField("level", finding.severity().word());
        writeText("message", finding.what() + " " + finding.remedy(), json);
        json.writeArrayFieldStart("locations");
        places.write(finding);
        json.writeEndArray();
        places.writeRelated(finding);
        places.writeFix(finding);
    }

    /** What an entry excuses is suppressed in the source, with a justification (section 3.35). */
    private static void writeSuppression(Excused excused, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("suppressions");
        json.writeStartObject();
        json.writeStringField("kind", "inSource");
        json.writeStringField("justification", excused.because());
        json.writeEndObject();
        json.writeEndArray();
    }

    static void writeText(String field, String text, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart(field);
        json.writeStringField("text", text);
        json.writeEndObject();
    }
}
