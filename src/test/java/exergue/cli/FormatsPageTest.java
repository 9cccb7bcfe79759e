package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page on formats names everything that the approved files hold. */
class FormatsPageTest {

    private static final Path GOLDEN = Path.of("src/test/resources/golden");

    static Stream<String> names() throws IOException {
        Set<String> names = new TreeSet<>(keys(GOLDEN.resolve("cli/report/json.json")));
        names.addAll(keys(GOLDEN.resolve("exchange/two-coins/catalogue.json")));
        String headings = Files.readString(GOLDEN.resolve("exchange/two-coins/catalogue.csv")).lines().findFirst().orElseThrow();
        Arrays.stream(headings.split(",")).map(heading -> heading.replaceAll("^(diameter|axis)-(by|recorded|status|printed)$",
                "weight-$2").replaceAll("^(diameter-mm|axis-h)-second$", "weight-g-second")).forEach(names::add);
        return names.stream();
    }

    private static Set<String> keys(Path json) throws IOException {
        Set<String> keys = new TreeSet<>();
        try (JsonParser parser = new JsonFactory().createParser(Files.readString(json))) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token == JsonToken.FIELD_NAME) {
                    keys.add(parser.currentName());
                }
            }
        }
        return keys;
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyNameIsExplained(String name) throws IOException {
        assertTrue(Files.readString(Path.of("docs/formats.md")).contains("`" + name + "`"), name);
    }
}
