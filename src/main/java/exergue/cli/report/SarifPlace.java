package exergue.cli.report;

import com.fasterxml.jackson.core.JsonGenerator;
import exergue.finding.Finding;
import exergue.finding.Place;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;

/** Places as SARIF writes them: location, region, related locations and fixes (sections 3.28 to 3.30, 3.55 to 3.57). */
final class SarifPlace {

    /** A deleted region without length is a place to insert at; elsewhere no length means it is not known. */
    private static final String DELETED = "deletedRegion";

    private final Report report;
    private final JsonGenerator json;

    SarifPlace(Report report, JsonGenerator json) {
        this.report = report;
        this.json = json;
    }

    void write(Finding finding) throws IOException {
        json.writeStartObject();
        writePhysical(finding.place());
        if (!finding.path().isEmpty()) {
            json.writeArrayFieldStart("logicalLocations");
            json.writeStartObject();
            json.writeStringField("fullyQualifiedName", finding.path());
            json.writeEndObject();
            json.writeEndArray();
        }
        json.writeEndObject();
    }

    void writeRelated(Finding finding) throws IOException {
        if (finding.related().isEmpty()) {
            return;
        }
        json.writeArrayFieldStart("relatedLocations");
        int id = 0;
        for (Finding.Related related : finding.related()) {
            json.writeStartObject();
            json.writeNumberField("id", id++);
            writePhysical(related.place());
            SarifReport.writeText("message", related.what(), json);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    void writeFix(Finding finding) throws IOException {
        if (finding.edit().isEmpty()) {
            return;
        }
        Finding.SafeEdit edit = finding.edit().get();
        json.writeArrayFieldStart("fixes");
        json.writeStartObject();
        SarifReport.writeText("description", finding.remedy(), json);
        json.writeArrayFieldStart("artifactChanges");
        json.writeStartObject();
        writeArtifact(edit.place());
        json.writeArrayFieldStart("replacements");
        json.writeStartObject();
        writeRegion(DELETED, edit.place());
        SarifReport.writeText("insertedContent", edit.text(), json);
        json.writeEndObject();
        json.writeEndArray();
        json.writeEndObject();
        json.writeEndArray();
        json.writeEndObject();
        json.writeEndArray();
    }

    private void writePhysical(Place place) throws IOException {
        json.writeObjectFieldStart("physicalLocation");
        writeArtifact(place);
        if (place.line() > 0) {
            writeRegion("region", place);
        }
        json.writeEndObject();
    }

    private void writeArtifact(Place place) throws IOException {
        json.writeObjectFieldStart("artifactLocation");
        json.writeStringField("uri", uri(report.seen(place.file())));
        json.writeEndObject();
    }

    private void writeRegion(String name, Place place) throws IOException {
        json.writeObjectFieldStart(name);
        json.writeNumberField("startLine", place.line());
        if (place.column() > 0) {
            json.writeNumberField("startColumn", place.column());
        }
        if (place.column() > 0 && (place.length() > 0 || name.equals(DELETED))) {
            json.writeNumberField("endColumn", place.column() + place.length());
        }
        json.writeEndObject();
    }

    /** The path as a relative reference, or a file address where it is absolute; everything beyond ASCII escaped. */
    private static String uri(String path) {
        boolean drive = path.matches("[A-Za-z]:/.*");
        boolean absolute = path.startsWith("/") || drive;
        String steps = drive ? "/" + path : !absolute && path.contains(":") ? "./" + path : path;
        try {
            URI uri = new URI(absolute ? "file" : null, absolute ? "" : null, steps, null);
            return uri.toASCIIString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException("a path always makes a reference: " + path, e);
        }
    }
}
