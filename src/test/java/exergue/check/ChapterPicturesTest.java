package exergue.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Exergue;
import exergue.PicturedTree;
import exergue.Progress;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who is thanked for the pictures of chapters. */
class ChapterPicturesTest {

    private static final String CHAPTER = """
            # The harbour

            Figure [harbour]: The harbour from the mole.

            ![The harbour](../photographs/harbour.jpg)
            """;

    private static Exergue.Checked checked(String chapter, String rights) throws IOException {
        Map<String, String> files = new TreeMap<>(new SmallTree().files());
        files.put("photographs/harbour.jpg", "a picture");
        files.put("chapters/harbour.md", chapter);
        files.put("catalogue.yaml", "title: Coins\nlanguage: en\nparts:\n  body: [chapters/harbour.md, catalogue, credits]\n" + rights);
        return Exergue.check(PicturedTree.of(files), Progress.SILENT);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "''| photograph-without-credit photograph-without-permission",
        "'credit: A. Orr'| photograph-without-permission",
        "'credit: A. Orr, permission: not needed'| ''"})
    void whatIsNotSaidOfAPictureIsFoundWhereItIsShown(String said, String codes) throws IOException {
        for (String chapter : List.of(CHAPTER, CHAPTER.replace("Figure [harbour]", "> Said.\n\nFigure [harbour]"))) {
            List<String> found = checked(chapter, said.isEmpty() ? ""
                    : "pictures:\n  - {picture: photographs/harbour.jpg, " + said + "}\n").findings().all().stream()
                    .map(finding -> finding.code().id()).toList();
            assertEquals(codes, String.join(" ", found));
        }
    }

    @Test
    void theListOfCreditsLeadsToTheFigure() throws IOException {
        String text = checked(CHAPTER, "pictures:\n  - {picture: photographs/harbour.jpg, credit: A. Orr, permission: not needed}\n")
                .book().orElseThrow().body().get(2).toString();
        assertTrue(text.contains("A. Orr") && text.contains("Fig.\u00A01"), text);
        assertEquals(2, checked(CHAPTER, "").book().orElseThrow().body().size(), "nobody is thanked");
    }
}
