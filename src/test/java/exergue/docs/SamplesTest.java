package exergue.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.PicturedTree;
import exergue.Exergue;
import exergue.Progress;
import exergue.finding.Finding;
import exergue.finding.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every piece of a file in the pages for authors, laid over the catalogue that {@code start} makes, is understood. A
 * comment before the piece says where it belongs: a whole file, or keys that are added to a file.
 */
class SamplesTest {

    private static final Path SKELETON = Path.of("src/main/resources/exergue/start");
    private static final Pattern SAMPLE = Pattern.compile(
            "(?:<!-- (file|keys of): (\\S+) -->\n)?```(?:yaml|bibtex|(?<=-->\n```)markdown)\n(.*?)```", Pattern.DOTALL);

    /** Pages about other things: reference and findings have their own tests, and measuring is read line by line. */
    private static final Set<String> OTHERWISE = Set.of("measuring.md");

    static Stream<String> pages() throws IOException {
        try (Stream<Path> docs = Files.list(Path.of("docs"))) {
            return docs.map(page -> page.getFileName().toString()).filter(page -> page.endsWith(".md") && !OTHERWISE.contains(page))
                    .sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void samplesAreUnderstood(String page) throws IOException {
        Map<String, String> files = skeleton();
        Matcher sample = SAMPLE.matcher(Files.readString(Path.of("docs", page)));
        while (sample.find()) {
            assertTrue(sample.group(2) != null, "does not say where it belongs: " + sample.group());
            String file = sample.group(2);
            files.put(file, sample.group(1).equals("file") ? sample.group(3)
                    : withKeys(files.get(file), sample.group(3)));
        }
        List<Finding> wrong = Exergue.check(PicturedTree.of(files), Progress.SILENT).findings().all().stream()
                .filter(finding -> finding.severity() == Severity.ERROR).toList();
        assertEquals(List.of(), wrong);
    }

    @Test
    void samplesAreSeen() throws IOException {
        for (String page : List.of("guide.md", "house-style.md", "works.md")) {
            assertTrue(SAMPLE.matcher(Files.readString(Path.of("docs", page))).results().count() >= 4, page);
        }
    }

    private static Map<String, String> skeleton() throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(SKELETON)) {
            for (Path file : walk.filter(Files::isRegularFile).toList()) {
                files.put(SKELETON.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        }
        List.of("photographs/ov-1-obv.jpg", "photographs/ov-1-rev.jpg", "photographs/harbour.jpg").forEach(path -> files.put(path, "a picture"));
        files.put("styles/journal.csl", Files.readString(Path.of("src/main/resources/exergue/styles/author-date.csl")));
        return files;
    }

    /** The file with the keys of the sample in place of its own. */
    private static String withKeys(String file, String sample) {
        List<String> kept = new ArrayList<>();
        boolean replaced = false;
        for (String line : file.split("\n")) {
            if (!line.isEmpty() && Character.isLetter(line.charAt(0))) {
                String key = line.substring(0, line.indexOf(':') + 1);
                replaced = Stream.of(sample.split("\n")).anyMatch(of -> of.startsWith(key));
            }
            if (!replaced) {
                kept.add(line);
            }
        }
        return String.join("\n", kept) + "\n" + sample;
    }
}
