package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import exergue.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list of the page on lists, entered as its reader would. */
class EnterCommandTest {

    @TempDir
    private Path folder;
    private Path source;
    private Path list;
    private Path plan;

    @BeforeEach
    void layOut() throws IOException {
        source = folder.resolve("my-catalogue");
        list = folder.resolve("my-museum.csv");
        plan = folder.resolve("my-museum.yaml");
        Ran.command("start", source.toString());
        Files.writeString(list, block("my-museum.csv"));
        append("conventions.yaml", "\n" + block("conventions.yaml"));
        append("collections.yaml", block("collections.yaml"));
        Files.writeString(source.resolve("find-spots.yaml"), block("find-spots.yaml"));
    }

    private void append(String file, String text) throws IOException {
        Files.writeString(source.resolve(file), Files.readString(source.resolve(file)) + text);
    }

    private static String block(String file) throws IOException {
        Matcher block = Pattern.compile("<!-- (?:file|keys of): " + Pattern.quote(file) + " -->\n```\\w+\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(Path.of("docs/lists.md")));
        assertTrue(block.find(), file);
        return block.group(1);
    }

    private Ran enter(String... more) {
        return Ran.command(Stream.concat(Stream.of("enter", list.toString(), "--into", source.toString()), Stream.of(more)).toArray(String[]::new));
    }

    private Map<String, String> files() throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path file : walk.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(file).toString(), Files.readString(file));
            }
        }
        return files;
    }

    private String plain(Ran ran) {
        return ran.all().replace(folder.toString() + "/", "").replace("\r\n", "\n");
    }

    @Test
    void fromTheListToTheBook() throws IOException {
        Golden.check(Path.of("src/test/resources/golden/cli/enter/1-proposed.txt"), plain(enter()));
        Files.writeString(plan, block("my-museum.yaml"));
        Map<String, String> before = files();
        Golden.check(Path.of("src/test/resources/golden/cli/enter/2-looked-at.txt"), plain(enter("--look")));
        assertEquals(before, files(), "to look writes nothing");
        Golden.check(Path.of("src/test/resources/golden/cli/enter/3-entered.txt"), plain(enter()));
        Map<String, String> after = files();
        assertEquals(before.size() + 4, after.size());
        before.forEach((file, text) -> assertEquals(text, after.get(file), file));
        Ran again = enter();
        assertTrue(again.out().contains("my-catalogue: 4 coins, all there already; 0 errors"), again.all());
        assertEquals(after, files());
        assertEquals(0, Ran.command("check", source.toString()).code());
    }

    @Test
    void ifOneCellIsWrongNothingIsWritten() throws IOException {
        Files.writeString(plan, block("my-museum.yaml"));
        Files.writeString(list, Files.readString(list).replace("0,58", "0,5g8"));
        Map<String, String> before = files();
        Ran ran = enter();
        assertAll(() -> assertEquals(1, ran.code(), ran.all()),
                () -> assertTrue(plain(ran).contains("my-museum.csv:9:19: error: Row 8, column “Wt (g)”: "), plain(ran)),
                () -> assertTrue(ran.out().contains("nothing was written, since there are errors"), ran.out()),
                () -> assertEquals(before, files()));
    }

    @Test
    void ifTheCheckFindsAnErrorInANewEntryNothingIsWritten() throws IOException {
        Files.writeString(plan, block("my-museum.yaml").replace("  Shelf: left out", "  Shelf: obverse legend"));
        Files.writeString(list, Files.readString(list).replace("A 4", "Α]Β"));
        Map<String, String> before = files();
        Ran ran = enter();
        assertEquals(1, ran.code(), ran.all());
        assertTrue(ran.out().contains("(Row 4 of my-museum.csv.)"), ran.out());
        assertEquals(before, files());
    }

    @Test
    void anEntryThatCannotBeReadMayBeACoinOfTheList() throws IOException {
        Files.writeString(plan, block("my-museum.yaml"));
        append("coins/ov-3.yaml", "weight: [\n");
        Ran ran = enter();
        assertEquals(1, ran.code());
        assertTrue(ran.out().contains("since this entry cannot be read") && ran.out().contains("nothing was written"), ran.out());
        assertFalse(Files.exists(source.resolve("coins/om-1931-7.yaml")));
    }

    @Test
    void errorsThatWereThereBeforeAreShownButDoNotStandInTheWay() throws IOException {
        Files.writeString(plan, block("my-museum.yaml"));
        append("coins/ov-3.yaml", "wieght: 3 g\n");
        Ran ran = enter();
        assertEquals(1, ran.code(), "as check would say");
        assertTrue(ran.out().contains("4 coins entered"), ran.out());
        assertTrue(Files.exists(source.resolve("coins/om-1931-7.yaml")));
    }

    @Test
    void findSpotsOfTheListAreNotShown() throws IOException {
        Files.writeString(plan, block("my-museum.yaml").replace("Fish market: fish-quarter", "Harbour: fish-quarter"));
        Ran ran = enter("--look");
        assertTrue(ran.out().contains("list-unknown-word"), ran.out());
        String shown = ran.out().replace("words: {as in the list", "");
        assertFalse(shown.contains("Fish market"), shown);
    }

    /** The page of each finding says so. */
    @Test
    void theHouseAndTheEntriesWeighWhatIsFound() throws IOException {
        Files.writeString(plan, block("my-museum.yaml").replace("  Shelf: left out\n", ""));
        assertTrue(enter().out().contains("[list-column-unclaimed]"));
        append("house-style.yaml", "\nfindings: {list-column-unclaimed: off}\n");
        assertTrue(enter().out().endsWith("4 coins, all there already; 0 errors, 0 warnings\n"), enter().out());
        Path coin = source.resolve("coins/om-1931-7.yaml");
        Files.writeString(coin, Files.readString(coin).replace("3.87", "3.86"));
        assertTrue(enter().out().contains("[list-differs-from-entry]"), enter().out());
        append("coins/om-1931-7.yaml", "excused: [{finding: list-differs-from-entry, because: weighed again at the Museum}]\n");
        assertTrue(enter().out().endsWith("4 coins, all there already; 0 errors, 0 warnings, 1 excused\n"), enter().out());
        assertTrue(Ran.command("check", source.toString()).out().contains("0 errors, 0 warnings"), "the excuse is not called idle");
        Files.writeString(source.resolve("house-style.yaml"), Files.readString(source.resolve("house-style.yaml"))
                .replace("list-column-unclaimed: off", "list-column-unclaimed: error"));
        assertEquals(1, enter().code());
    }

    @Test
    void aMachineGetsOneReportAndNothingElse() throws IOException {
        assertTrue(new ObjectMapper().readTree(enter("--format", "json").out()).has("findings"));
        assertTrue(new ObjectMapper().readTree(enter("--look", "--format", "json").out()).has("findings"));
        assertTrue(new ObjectMapper().readTree(enter("--format", "sarif").out()).has("runs"));
    }

    @Test
    void theListAndItsFileMayLieInTheCatalogueWhereCheckLooksAtThem() throws IOException {
        Path lists = Files.createDirectories(source.resolve("lists"));
        Path there = Files.writeString(lists.resolve("museum.csv"), Files.readString(list));
        Files.writeString(lists.resolve("museum.yaml"), block("my-museum.yaml"));
        Ran ran = Ran.command("enter", there.toString(), "--into", source.toString());
        assertEquals(0, ran.code(), ran.all());
        assertTrue(Files.exists(source.resolve("coins/om-1931-7.yaml")));
        assertEquals(0, Ran.command("check", source.toString()).code());
        Files.writeString(lists.resolve("museum.yaml"), block("my-museum.yaml").replace("holds: weight", "holds: wieght"));
        Ran check = Ran.command("check", source.toString());
        assertEquals(1, check.code(), check.all());
        assertTrue(check.out().contains("lists/museum.yaml:13:19: error: “wieght”"), check.out());
    }

    @Test
    void elsewhereInTheCatalogueCheckSaysWhereTheyBelong() throws IOException {
        Files.writeString(source.resolve("museum.csv"), Files.readString(list));
        Files.writeString(source.resolve("museum.yaml"), block("my-museum.yaml"));
        Ran check = Ran.command("check", source.toString());
        assertTrue(check.out().contains("put both into the folder lists/"), check.out());
    }

    @Test
    void wrongUseIsSaid() throws IOException {
        Ran none = enter("--columns", "nowhere.yaml");
        assertEquals(2, none.code());
        assertTrue(none.err().contains("There is no file “nowhere.yaml”. Leave --columns out, and a file is proposed."), none.err());
        Ran folder = Ran.command("enter", source.toString(), "--into", source.toString());
        assertTrue(folder.err().contains("is a folder. Name the list in it"), folder.err());
        Files.delete(source.resolve("catalogue.yaml"));
        assertEquals(1, enter().code());
    }
}
