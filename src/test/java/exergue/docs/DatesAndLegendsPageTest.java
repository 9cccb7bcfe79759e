package exergue.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.dating.DatePrinter;
import exergue.dating.DateStyle;
import exergue.dating.DatingParser;
import exergue.dating.Parsed;
import exergue.legend.LegendParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the guide's tables of dates and legends show is what the program takes and prints. */
class DatesAndLegendsPageTest {

    private static final Pattern DATE = Pattern.compile("^\\| `(-?[0-9][^`]*)` \\| ([^|]+) \\|$", Pattern.MULTILINE);
    private static final Pattern SIGN = Pattern.compile("`([^`]+)`");

    private static String section(String heading) throws IOException {
        String guide = Files.readString(Path.of("docs/guide.md"));
        int start = guide.indexOf("## " + heading + "\n");
        return guide.substring(start, guide.indexOf("\n## ", start));
    }

    @Test
    void datesArePrintedAsTheGuideSays() throws IOException {
        List<String> rows = DATE.matcher(section("Write a date")).results().map(row -> {
            Parsed.Accepted date = assertInstanceOf(Parsed.Accepted.class, DatingParser.parse(row.group(1)), row.group(1));
            assertEquals(row.group(2), DatePrinter.print(date.dating(), DateStyle.DEFAULT).replaceAll("[\u00A0\u202F]", " "));
            return row.group(1);
        }).toList();
        assertTrue(rows.size() >= 5, rows::toString);
    }

    @Test
    void signsOfLegendsAreUnderstood() throws IOException {
        List<String> signs = section("Write a legend").lines().filter(line -> line.startsWith("| `"))
                .flatMap(line -> SIGN.matcher(line).results().map(sign -> sign.group(1))).toList();
        assertTrue(signs.size() >= 7, signs::toString);
        signs.forEach(sign -> assertEquals(List.of(), LegendParser.parse(sign).remarks(), sign));
    }
}
