package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every command that a page for authors shows is typed as it stands there, and does what it should. */
class CommandsInDocsTest {

    private static final Pattern BLOCK = Pattern.compile("^```\\w*\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE);
    private static final Pattern COMMAND = Pattern.compile("^(?:java -jar (?:target/)?exergue\\.jar|(?:target/)?exergue) (.*?)(?: +#.*)?$",
            Pattern.MULTILINE);
    private static final Pattern CONVENTION = Pattern.compile(
            "<!-- keys of: conventions.yaml -->\n```yaml\n(.*?)```", Pattern.DOTALL);
    private static final Pattern SHEET = Pattern.compile("<!-- file: (my-[a-z-]+\\.csv) -->\n```csv\n(.*?)```", Pattern.DOTALL);
    private static final Pattern IN_ORDER = Pattern.compile("<!-- (?:file|keys of): (my-[a-z-]+|conventions|collections|find-spots)\\.yaml -->\n"
            + "```yaml\n(.*?)^```$|^```\\w*\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE);
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir
    private Path folder;

    static Stream<String> pages() throws IOException {
        List<String> pages = new ArrayList<>(List.of("README.md"));
        try (Stream<Path> docs = Files.list(Path.of("docs"))) {
            docs.map(page -> page.toString().replace('\\', '/')).filter(page -> page.endsWith(".md")).sorted().forEach(pages::add);
        }
        return pages.stream().filter(page -> !commands(page).isEmpty());
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyCommandDoesWhatItShould(String page) throws IOException, InterruptedException {
        List<String> commands = commands(page);
        if (commands.stream().noneMatch(command -> command.startsWith("start "))) {
            Ran.command("start", folder.resolve("my-catalogue").toString());
        }
        writeSheets(page);
        if (Files.readString(Path.of(page)).contains("<!-- file: my-museum.yaml -->")) {
            writeAndRunInOrder(page);
            return;
        }
        for (String command : commands) {
            Ran ran = command.startsWith("proof ") ? Ran.stopped(said -> { }, words(command + " --port 0")) : Ran.command(words(command));
            assertEquals(0, ran.code(), command + "\n" + ran.all());
            if (command.startsWith("start ")) {
                declareConventions(page);
            }
        }
    }

    /** A page that tells its reader to write files between its commands. */
    private void writeAndRunInOrder(String page) throws IOException {
        Matcher block = IN_ORDER.matcher(Files.readString(Path.of(page)));
        int ran = 0;
        while (block.find()) {
            if (block.group(1) != null) {
                Path file = folder.resolve((block.group(1).startsWith("my-") ? "" : "my-catalogue/") + block.group(1) + ".yaml");
                boolean added = Files.exists(file) && !block.group(1).startsWith("my-");
                Files.writeString(file, (added ? Files.readString(file) + "\n" : "") + block.group(2));
                continue;
            }
            for (String command : COMMAND.matcher(block.group(3)).results().map(found -> found.group(1)).toList()) {
                Ran one = Ran.command(words(command));
                assertEquals(0, one.code(), command + "\n" + one.all());
                ran++;
            }
        }
        assertEquals(commands(page).size(), ran);
    }

    @Test
    void theReadmeAndTheGuideShowCommands() {
        assertTrue(commands("README.md").size() >= 5 && commands("docs/guide.md").size() >= 8);
    }

    /** Those that the page has told its reader to declare. */
    private void declareConventions(String page) throws IOException {
        Matcher sample = CONVENTION.matcher(Files.readString(Path.of(page)));
        while (sample.find()) {
            Files.writeString(folder.resolve("my-catalogue/conventions.yaml"), "\n" + sample.group(1), StandardOpenOption.APPEND);
        }
    }

    /** Sheets of the page; the README enters the one of the page on lists. */
    private void writeSheets(String page) throws IOException {
        Matcher sheet = SHEET.matcher(Files.readString(Path.of(page.equals("README.md") ? "docs/lists.md" : page)));
        while (sheet.find()) {
            Files.writeString(folder.resolve(sheet.group(1)), sheet.group(2));
        }
    }

    /** The folders of the page are folders of this test; metrology is shown on the groups that the demonstration declares. */
    private String[] words(String command) {
        String demonstration = command.startsWith("metrology ") ? "catalogue-src" : folder.resolve("my-catalogue").toString();
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(command);
        while (word.find()) {
            String plain = word.group(1) == null ? word.group(2) : word.group(1);
            words.add(plain.equals("catalogue-src") ? demonstration
                    : plain.matches("my-[a-z-]+(\\.csv)?") ? folder.resolve(plain).toString() : plain);
        }
        return words.toArray(String[]::new);
    }

    private static List<String> commands(String page) {
        try {
            List<String> commands = new ArrayList<>();
            Matcher block = BLOCK.matcher(Files.readString(Path.of(page)));
            while (block.find()) {
                COMMAND.matcher(block.group(1)).results().forEach(found -> commands.add(found.group(1)));
            }
            return commands;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
