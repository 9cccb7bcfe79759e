package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.review.Repositories;
import exergue.review.SmallCatalogue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The configuration of a hosted CI that the docs show is sound YAML, and each of its commands does what it should. */
class CiSampleTest {

    private static final Pattern SAMPLE = Pattern.compile("```yml\n(.*?)```", Pattern.DOTALL);
    private static final String PROGRAM = "java -jar tools/exergue.jar ";

    @TempDir
    private Path folder;

    @Test
    void everyCommandDoesWhatItShould() throws IOException {
        SmallCatalogue first = new SmallCatalogue();
        commit(first, "first");
        commit(first.with("coins/lk-1.yaml", "3.78 g", "3.87 g"), "second");
        List<String> seen = new ArrayList<>();
        for (String run : runs()) {
            assertTrue(run.startsWith(PROGRAM), run);
            String command = run.substring(PROGRAM.length()).replaceAll(" >> .*", "").replace("origin/main", "first");
            seen.add(command.split(" ")[0]);
            String[] words = command.split(" ");
            for (int i = 0; i < words.length; i++) {
                words[i] = words[i].matches("catalogue-src|proof|book") ? folder.resolve(words[i]).toString() : words[i];
            }
            Ran ran = Ran.command(words);
            assertEquals(0, ran.code(), command + "\n" + ran.all());
        }
        assertEquals(List.of("check", "collate", "typeset"), seen);
        assertTrue(Files.exists(folder.resolve("proof/collation.pdf")) && Files.exists(folder.resolve("book/catalogue.pdf")));
    }

    private void commit(SmallCatalogue catalogue, String tag) {
        Map<String, String> files = new TreeMap<>();
        catalogue.files().forEach((path, text) -> files.put("catalogue-src/" + path, text));
        Repositories.commit(folder, files, tag);
    }

    private static List<String> runs() throws IOException {
        Matcher sample = SAMPLE.matcher(Files.readString(Path.of("docs/review.md")));
        assertTrue(sample.find());
        Map<String, Map<String, Map<String, List<Map<String, Object>>>>> jobs =
                new Yaml(new SafeConstructor(new LoaderOptions())).load(sample.group(1));
        return jobs.get("jobs").get("review").get("steps").stream().filter(step -> step.containsKey("run"))
                .map(step -> (String) step.get("run")).toList();
    }
}
