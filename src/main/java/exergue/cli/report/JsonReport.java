package exergue.cli.report;

import com.fasterxml.jackson.core.JsonGenerator;
import exergue.Exergue;
import exergue.exchange.JsonText;
import exergue.finding.Excused;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.finding.Severity;
import java.io.IOException;

/**
 * Findings as this tool's own JSON: {@code {"tool", "version", "source", "errors", "warnings", "notes", "findings": [
 * {"code", "severity", "place": {"file", "line", "column", "length"}, "path", "what", "remedy", "related": [{"place",
 * "what"}], "edit": {"place", "text"}}], "excused": [{"because", "place", "finding"}]}}. Files are paths inside the source folder; lines and columns count from 1,
 * columns in code points; what is not known is left out, and so is {@code edit} where there is no safe one.
 */
final class JsonReport {

    private JsonReport() { }

    static String render(Report report) {
        return JsonText.of(json -> {
            json.writeStartObject();
            json.writeStringField("tool", "Exergue");
            json.writeStringField("version", Exergue.VERSION);
            json.writeStringField("source", report.source());
            json.writeNumberField("errors", report.findings().count(Severity.ERROR));
            json.writeNumberField("warnings", report.findings().count(Severity.WARNING));
            json.writeNumberField("notes", report.findings().count(Severity.NOTE));
            json.writeArrayFieldStart("findings");
            for (Finding finding : report.findings().all()) {
                write(finding, json);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("excused");
            for (Excused excused : report.findings().excused()) {
                json.writeStartObject();
                json.writeStringField("because", excused.because());
                write(excused.where(), json);
                json.writeFieldName("finding");
                write(excused.finding(), json);
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    private static void write(Finding finding, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("code", finding.code().id());
        json.writeStringField("severity", finding.severity().word());
        write(finding.place(), json);
        json.writeStringField("path", finding.path());
        json.writeStringField("what", finding.what());
        json.writeStringField("remedy", finding.remedy());
        json.writeArrayFieldStart("related");
        for (Finding.Related related : finding.related()) {
            json.writeStartObject();
            write(related.place(), json);
            json.writeStringField("what", related.what());
            json.writeEndObject();
        }
        json.writeEndArray();
        if (finding.edit().isPresent()) {
            json.writeObjectFieldStart("edit");
            write(finding.edit().get().place(), json);
            json.writeStringField("text", finding.edit().get().text());
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private static void write(Place place, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart("place");
        json.writeStringField("file", place.file());
        writeIfKnown("line", place.line(), json);
        writeIfKnown("column", place.column(), json);
        writeIfKnown("length", place.length(), json);
        json.writeEndObject();
    }

    private static void writeIfKnown(String name, int number, JsonGenerator json) throws IOException {
        if (number > 0) {
            json.writeNumberField(name, number);
        }
    }
}
