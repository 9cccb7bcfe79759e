package exergue.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import exergue.PicturedTree;
import exergue.Golden;
import exergue.source.keys.FileKind;
import exergue.source.reference.JsonSchema;
import exergue.source.reference.KeyReference;
import exergue.source.reference.UnitReference;
import exergue.source.shape.Block;
import exergue.source.shape.Key;
import exergue.source.shape.ListOf;
import exergue.source.shape.MapOf;
import exergue.source.shape.Wanted;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The reference page and the schemas say what the reader does: both are tried with one sample that uses every key. */
class ReferenceTest {

    static List<FileKind<?>> kinds() {
        return FileKind.all();
    }

    @Test
    void theCommittedPageIsWhatTheKeysSay() {
        Golden.check(Path.of("docs/reference/keys.md"), KeyReference.markdown());
    }

    @Test
    void theCommittedPageOfUnitsIsWhatTheTableSays() {
        Golden.check(Path.of("docs/reference/units.md"), UnitReference.markdown());
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void theCommittedSchemaIsWhatTheKeysSay(FileKind<?> kind) {
        Golden.check(Path.of("docs/schema", kind.name() + ".schema.json"), JsonSchema.of(kind));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void theSchemaLetsEveryExamplePassAndNoMisspeltKey(FileKind<?> kind) {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(JsonSchema.of(kind), InputFormat.JSON);
        String sample = sample(kind);
        assertEquals(List.of(), schema.validate(sample, InputFormat.YAML), sample);
        String key = firstKey(kind.wanted()).name();
        String misspelt = sample.replaceFirst("(?m)^( *)" + key + ":", "$1" + key + "x:");
        assertFalse(schema.validate(misspelt, InputFormat.YAML).isEmpty(), misspelt);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void theReaderTakesEveryExampleWithoutAWord(FileKind<?> kind) {
        Map<String, String> files = Trees.sound();
        files.put("photographs/lk-0042-obv.jpg", "a picture");
        files.put("photographs/lk-0042-rev.jpg", "a picture");
        files.put("photographs/harbour.jpg", "a picture");
        files.put("templates/page.ftlh", "a template");
        files.put("styles/journal.csl", "a style");
        files.put("chapters/introduction.md", "# Introduction\n");
        if (kind == FileKind.CATALOGUE) {
            files.remove("chapters/history.md");
        } else {
            files.remove("chapters/introduction.md");
        }
        String path = kind == FileKind.COIN ? "coins/lk-0042.yaml" : kind == FileKind.TYPE ? "types/owl-drachm.yaml"
                : kind == FileKind.list() ? "lists/museum.yaml" : kind.where();
        if (kind == FileKind.CONVENTIONS) {
            files.remove("coins/lk-1.yaml");
        }
        files.put(path, sample(kind));
        assertEquals("", Trees.shown(Trees.read(PicturedTree.of(files)).findings()), sample(kind));
    }

    /** A file that has every key, each with its example. */
    private static String sample(FileKind<?> kind) {
        StringBuilder yaml = new StringBuilder();
        write(kind.wanted(), "", yaml);
        return yaml.toString();
    }

    private static void write(Wanted<?> wanted, String indent, StringBuilder yaml) {
        if (wanted instanceof MapOf<?> map) {
            yaml.append(indent).append("some-id:\n");
            write(map.member(), indent + "  ", yaml);
        } else if (wanted instanceof ListOf<?> list) {
            yaml.append(indent).append("-\n");
            write(list.member(), indent + "  ", yaml);
        } else if (wanted instanceof Block<?> block) {
            for (Key<?> key : block.keys()) {
                yaml.append(indent).append(key.name()).append(": ").append(key.example()).append('\n');
                if (key.example().isEmpty()) {
                    write(key.wanted(), indent + "  ", yaml);
                }
            }
        }
    }

    private static Key<?> firstKey(Wanted<?> wanted) {
        return wanted instanceof MapOf<?> map ? firstKey(map.member()) : ((Block<?>) wanted).keys().get(0);
    }
}
