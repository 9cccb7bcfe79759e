package exergue.exchange;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** JSON laid out for reading and for comparing line by line: two spaces, line feeds on every system. */
public final class JsonText {

    private static final JsonFactory FACTORY = new JsonFactory();

    private JsonText() { }

    /** What is to be written. */
    @FunctionalInterface
    public interface Content {
        void writeTo(JsonGenerator json) throws IOException;
    }

    /** One JSON text, ended by a line feed. */
    public static String of(Content content) {
        StringWriter text = new StringWriter();
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        Separators separators = Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER);
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter(separators)
                    .withObjectIndenter(lines).withArrayIndenter(lines));
            content.writeTo(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a string writer has no disk to fail
        }
        return text.append('\n').toString();
    }
}
