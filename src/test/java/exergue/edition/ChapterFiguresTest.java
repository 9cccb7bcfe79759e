package exergue.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Exergue;
import exergue.PicturedTree;
import exergue.Progress;
import exergue.model.Inline;
import exergue.model.Prose;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What chapters ask for, in the book. */
class ChapterFiguresTest {

    private static final String CHAPTER = """
            # Weights

            The {weighed coins of drachms} undamaged drachms average {mean weight of drachms}, *{ least weight  of drachms }* at least.

            Figure [all]: All of them.

            ```figures
            show: weights
            of: drachms,
             drachms
            as: histogram
            steps: 0.1 g
            ```
            """;

    @Test
    void sentencesFollowTheCoins() throws IOException {
        Map<String, String> files = files("en", "3.87 g", "3.91 g");
        assertEquals("The 2 undamaged drachms average 3.89\u202Fg, 3.87\u202Fg at least.", sentence(files));
        files.put("coins/lk-3.yaml", coin("lk-3", "4.10 g", ""));
        assertEquals("The 3 undamaged drachms average 3.96\u202Fg, 3.87\u202Fg at least.", sentence(files));
        files.put("coins/lk-4.yaml", coin("lk-4", "2.10 g", "damage: [broken]\n"));
        assertEquals("The 3 undamaged drachms average 3.96\u202Fg, 3.87\u202Fg at least.", sentence(files));
    }

    /** No nought is printed that nobody has read. */
    @Test
    void aMeanIsNoFinerThanItsWeights() throws IOException {
        assertTrue(sentence(files("en", "3.9 g", "4.1 g")).contains("average 4.0\u202Fg"));
    }

    @ParameterizedTest
    @CsvSource({"en, Histogram of weights", "fr, Histogramme des poids", "de, Histogramm der Gewichte", "it, Istogramma dei pesi"})
    void aChartSpeaksTheLanguageOfTheBook(String language, String words) throws IOException {
        Prose.Drawing drawing = blocks(files(language, "3.87 g", "3.91 g")).stream().filter(Prose.Drawing.class::isInstance)
                .map(Prose.Drawing.class::cast).findFirst().orElseThrow();
        assertTrue(drawing.alternative().startsWith(words), drawing.alternative());
        assertFalse(drawing.alternative().contains("{"), drawing.alternative());
        assertTrue(drawing.caption().orElseThrow().label().isPresent());
        assertTrue(drawing.svg().contains("Gentium Book Plus") && !drawing.svg().contains("opacity"), drawing.svg());
        assertEquals(2, drawing.svg().split("n = 2", -1).length - 1);
    }

    private static String sentence(Map<String, String> files) throws IOException {
        return Inline.plain(((Prose.Paragraph) blocks(files).get(0)).runs());
    }

    private static List<Prose> blocks(Map<String, String> files) throws IOException {
        Exergue.Checked checked = Exergue.check(PicturedTree.of(files), Progress.SILENT);
        assertFalse(checked.findings().hasErrors(), checked.findings().all()::toString);
        return ((Part.Text) checked.book().orElseThrow().body().get(0)).blocks();
    }

    private static Map<String, String> files(String language, String... weights) {
        Map<String, String> files = new TreeMap<>();
        files.put("catalogue.yaml", "title: Coins of the Coast\nlanguage: " + language + "\nparts: {body: [chapters/weights.md, catalogue]}\n"
                + "groups:\n  drachms: {name: Drachms, coins: {denomination: [drachm]}}\n");
        files.put("conventions.yaml", "bench: {title: measurements at the bench, by: the staff}\n");
        files.put("mints.yaml", "lakonthos: {name: Lakonthos}\n");
        files.put("chapters/weights.md", CHAPTER);
        files.put("types/owl.yaml", "id: owl\nmint: lakonthos\ndenomination: drachm\nmetal: silver\nobverse: {description: Head}\n"
                + "reverse: {description: Owl}\n");
        for (int i = 0; i < weights.length; i++) {
            files.put("coins/lk-" + (i + 1) + ".yaml", coin("lk-" + (i + 1), weights[i], ""));
        }
        return files;
    }

    private static String coin(String id, String weight, String more) {
        return "id: " + id + "\ntype: owl\nmeasured: {by: bench, weight: " + weight + ", diameter: 18 mm, axis: 6 h}\n" + more;
    }
}
