package exergue.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.MemoryTree;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Parsed;
import exergue.measure.PrintForm;
import exergue.measure.Printer;
import exergue.measure.Reading;
import exergue.measure.ReadingParser;
import exergue.measure.Working;
import exergue.model.Written;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** docs/measuring.md does not say what the program does not do: its tables and samples are read and run. */
class MeasuringPageTest {

    private static final String PAGE = page();
    private static final Pattern FENCED = Pattern.compile("(?ms)^```(\\w+)\\n(.*?)^```");
    private static final Loaded SAMPLES = samples();

    record Row(Kind kind, String recorded, String by, String printed) { }

    static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        PAGE.lines().filter(line -> line.matches("\\| (weight|diameter|axis|thickness|density|surface) \\|.*")).forEach(line -> {
            List<String> cells = Arrays.stream(line.split("\\|")).map(cell -> cell.strip().replace("`", "")).toList();
            rows.add(new Row(Kind.valueOf(cells.get(1).toUpperCase(Locale.ROOT)), cells.get(2), cells.get(3), cells.get(4)));
        });
        return rows;
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theTextPrintsAsThePageSays(Row row) {
        assertEquals(row.printed(), printed(row), row.recorded());
    }

    private static String printed(Row row) {
        Parsed parsed = ReadingParser.parse(row.kind(), row.recorded(), convention(row.by()));
        if (parsed instanceof Parsed.Refused refused) {
            return "refused: " + refused.remark().fault().id();
        }
        Reading.Read read = (Reading.Read) ((Parsed.Accepted) parsed).reading();
        return Printer.print(read, PrintForm.DEFAULT).text().replace('\u202F', ' ').replace('\u00A0', ' ');
    }

    private static Convention convention(String id) {
        return id.isEmpty() ? Convention.UNDECLARED : Optional.ofNullable(SAMPLES.catalogue().orElseThrow().conventions().get(id))
                .map(Written::value).orElseThrow(() -> new AssertionError("the page has no convention " + id));
    }

    @Test
    void everyTableOfThePageIsRead() {
        assertTrue(rows().size() >= 50, () -> rows().size() + " rows");
    }

    @Test
    void theSamplesAreReadWithoutAWord() {
        assertEquals("", Trees.shown(SAMPLES.findings()));
        assertEquals(2, SAMPLES.catalogue().orElseThrow().coins().stream().filter(coin -> coin.id().value().startsWith("demo")).count());
    }

    @Test
    void theWorkingIsWhatTheProgramShows() {
        int seen = 0;
        for (Matcher block = FENCED.matcher(PAGE); block.find();) {
            Matcher command = Pattern.compile("\\$ exergue reading (\\w+) (.*)\\n(?s)(.*)").matcher(block.group(2));
            if (command.matches()) {
                Kind kind = Kind.valueOf(command.group(1).toUpperCase(Locale.ROOT));
                StringBuilder shown = new StringBuilder();
                Working.of(kind, command.group(2), Convention.UNDECLARED, PrintForm.DEFAULT).lines().forEach(line ->
                        shown.append(String.format(Locale.ROOT, "%-16s%s%n", line.label(), line.text()).replace('\u202F', ' ')));
                assertEquals(command.group(3), shown.toString());
                seen++;
            }
        }
        assertEquals(1, seen);
    }

    /** Every YAML sample under the name that its first line gives, in a small tree that has what they point to. */
    private static Loaded samples() {
        Map<String, String> files = new TreeMap<>(Trees.sound());
        files.put("coins/lk-1.yaml", "id: lk-1\ntype: demo\n");
        files.put("types/demo.yaml", "id: demo\nmint: lampron\ndenomination: Drachm\nmetal: silver\n");
        for (Matcher block = FENCED.matcher(PAGE); block.find();) {
            if (block.group(1).equals("yaml")) {
                files.put(block.group(2).lines().findFirst().orElseThrow().substring(2), block.group(2));
            }
        }
        return Trees.read(MemoryTree.ofText(files));
    }

    private static String page() {
        try {
            return Files.readString(Path.of("docs/measuring.md"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
