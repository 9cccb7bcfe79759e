package exergue.cli.report;

import com.fasterxml.jackson.core.JsonGenerator;
import exergue.Exergue;
import exergue.exchange.JsonText;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Findings;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

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

    private static List<Code> rules(Findings findings) {
        List<Code> rules = new ArrayList<>();
        findings.all().stream().map(Finding::code).distinct().forEach(rules::add);
        rules.sort(Comparator.comparing(Code::id));
        return rules;
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
        SarifPlace places = new SarifPlace(report, json);
        json.writeArrayFieldStart("results");
        for (Finding finding : report.findings().all()) {
            json.writeStartObject();
            json.writeStringField("ruleId", finding.code().id());
            json.writeNumberField("ruleIndex", rules.indexOf(finding.code()));
            json.writeStringField("level", finding.severity().word());
            writeText("message", finding.what() + " " + finding.remedy(), json);
            json.writeArrayFieldStart("locations");
            places.write(finding);
            json.writeEndArray();
            places.writeRelated(finding);
            places.writeFix(finding);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    static void writeText(String field, String text, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart(field);
        json.writeStringField("text", text);
        json.writeEndObject();
    }
}
