package exergue.cli.collation;

import com.fasterxml.jackson.core.JsonGenerator;
import exergue.Exergue;
import exergue.exchange.JsonText;
import exergue.review.change.Consequence;
import exergue.review.change.EntryChange;
import exergue.review.change.FieldChange;
import exergue.review.change.Subject;
import exergue.review.content.FieldWords;
import exergue.review.words.ConsequenceSentences;
import exergue.review.words.Sentences;
import java.io.IOException;
import java.util.List;

/**
 * For programs: {@code {"tool", "version", "before", "after", "identical", "summary", "rewritten": [file], "unread": [file], "entries":
 * [{"change": "added"|"changed"|"taken out", "section", "id", "number", "idBefore", "numberBefore", "fields": [{"field",
 * "of", "words", "before", "after", "remarks": []}], "sentences": []}], "splitOrJoined": [], "consequences": []}}. What
 * there is none of is left out.
 */
final class CollationJson {

    private CollationJson() { }

    static String render(Compared compared) {
        return JsonText.of(json -> {
            json.writeStartObject();
            json.writeStringField("tool", "Exergue");
            json.writeStringField("version", Exergue.VERSION);
            json.writeStringField("before", compared.before());
            json.writeStringField("after", compared.after());
            json.writeBooleanField("identical", compared.collation().identical());
            json.writeStringField("summary", compared.summary());
            write("rewritten", compared.collation().rewritten(), json);
            write("unread", compared.collation().unread(), json);
            json.writeArrayFieldStart("entries");
            for (EntryChange change : compared.collation().changes().entries()) {
                write(change, json);
            }
            json.writeEndArray();
            write("splitOrJoined", compared.collation().changes().kinships().stream().map(Sentences::of).toList(), json);
            List<Consequence> consequences = compared.collation().consequences();
            write("consequences", ConsequenceSentences.of(consequences), json);
            json.writeEndObject();
        });
    }

    private static void write(EntryChange change, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("change", change instanceof EntryChange.Added ? "added"
                : change instanceof EntryChange.TakenOut ? "taken out" : "changed");
        json.writeStringField("section", change.subject().section().name());
        write("id", "number", change.subject(), json);
        if (change instanceof EntryChange.Altered altered && !altered.before().equals(altered.subject())) {
            write("idBefore", "numberBefore", altered.before(), json);
        }
        json.writeArrayFieldStart("fields");
        for (FieldChange field : change.fields()) {
            write(change.subject(), field, json);
        }
        json.writeEndArray();
        write("sentences", Sentences.of(change), json);
        json.writeEndObject();
    }

    private static void write(String id, String number, Subject subject, JsonGenerator json) throws IOException {
        if (!subject.id().isEmpty()) {
            json.writeStringField(id, subject.id());
        }
        if (subject.number().isPresent()) {
            json.writeNumberField(number, subject.number().get());
        }
    }

    private static void write(Subject subject, FieldChange change, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("field", change.field().path());
        if (!change.field().of().isEmpty()) {
            json.writeStringField("of", change.field().of());
        }
        json.writeStringField("words", FieldWords.of(subject.section(), change.field()));
        if (change.before().isPresent()) {
            json.writeStringField("before", change.before().get().shown());
        }
        if (change.after().isPresent()) {
            json.writeStringField("after", change.after().get().shown());
        }
        write("remarks", change.remarks().stream().map(Sentences::of).toList(), json);
        json.writeEndObject();
    }

    private static void write(String name, List<String> texts, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(name);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }
}
