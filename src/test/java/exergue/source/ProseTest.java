package exergue.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.PicturedTree;
import exergue.model.Catalogue;
import exergue.model.Chapter;
import exergue.model.Inline;
import exergue.model.Prose;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What prose becomes. */
class ProseTest {

    /** Dashes and quotation marks as English books set them: common practice, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "\"Head\" right              | “Head” right",
        "the so-called \"owl\".      | the so-called “owl”.",
        "\"*Owl*\" and (\"owl\")     | “Owl” and (“owl”)",
        "\"a 'small' owl\"           | “a ‘small’ owl”",
        "\"'small', he wrote\"       | “‘small’, he wrote”",
        "the ruler's head            | the ruler’s head",
        "the soldiers' pay           | the soldiers’ pay",
        "'tis struck in '98          | ’tis struck in ’98",
        "pp. 12--18                  | pp. 12–18",
        "the mint---a small one      | the mint—a small one",
        "and so on...                | and so on…",
        "a row of dots.....          | a row of dots.....",
        "7\" wide                    | 7\" wide",
        "1. Head right               | 1. Head right",
        "`# 12`                      | # 12",
        "a < b                       | a < b",
    })
    void aLineIsSetWithRealMarks(String written, String printed) {
        String yaml = "id: owl\nmint: lampron\ndenomination: Drachm\nmetal: silver\nobverse:\n  description: |\n    " + written + "\n";
        Loaded loaded = Trees.read(Trees.with("types/owl.yaml", yaml));
        assertEquals("", Trees.shown(loaded.findings()));
        assertEquals(printed, loaded.catalogue().orElseThrow().types().get(0).obverse().description().orElseThrow().plain());
    }

    @Test
    void theHousesOwnMarksAreUsed() {
        Map<String, String> files = Trees.sound();
        files.put("house-style.yaml", "quotation-marks: {open: «, close: », inner-open: ‹, inner-close: ›}\n");
        files.put("chapters/history.md", "# History\n\nThe \"owl 'small'\" isn't old.\n");
        Catalogue catalogue = Trees.read(PicturedTree.of(files)).catalogue().orElseThrow();
        Prose.Paragraph paragraph = (Prose.Paragraph) catalogue.chapters().get("chapters/history.md").blocks().get(0);
        assertEquals("The «owl ‹small›» isn’t old.", Inline.plain(paragraph.runs()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"[work:hallam] | work hallam:", "[work:hallam, 45] | work hallam:45",
            "[work:Trewin1912,  12-14 ] | work Trewin1912:12–14", "[work:http://example.org/items/1, pl. 3, 4] "
            + "| work http://example.org/items/1:pl. 3, 4", "[coin:lk-1] | coin lk-1:"})
    void crossReferences(String written, String read) {
        Map<String, String> files = Trees.sound();
        files.put("chapters/history.md", "# History\n\nSee " + written + ".\n");
        Loaded loaded = Trees.read(PicturedTree.of(files));
        assertEquals("", Trees.shown(loaded.findings()));
        Chapter chapter = loaded.catalogue().orElseThrow().chapters().get("chapters/history.md");
        Inline.CrossReference found = (Inline.CrossReference) ((Prose.Paragraph) chapter.blocks().get(0)).runs().get(1);
        assertEquals(read, found.kind() + " " + found.id() + ":" + found.locator());
        assertEquals(5, found.place().column());
    }

    @Test
    void aChapterKeepsItsBlocks() {
        Map<String, String> files = Trees.sound();
        files.put("photographs/site.jpg", "a picture");
        files.put("chapters/history.md", """
                # The *mint*

                See [coin:lk-1] and [a page](https://example.org).

                ## Dies

                > quoted

                3. three
                4. four

                | Die | Coins |
                | --- | ---: |
                | O1 | 3 |

                ![The harbour](../photographs/site.jpg "Seen from the *north*")

                ***
                """);
        Loaded loaded = Trees.read(PicturedTree.of(files));
        assertEquals("", Trees.shown(loaded.findings()));
        Chapter chapter = loaded.catalogue().orElseThrow().chapters().get("chapters/history.md");
        assertEquals("The mint", Inline.plain(chapter.title()));
        assertEquals(List.of("Paragraph", "Heading", "Quotation", "Items", "Table", "Picture", "Rule"),
                chapter.blocks().stream().map(block -> block.getClass().getSimpleName()).toList());
        Prose.Paragraph first = (Prose.Paragraph) chapter.blocks().get(0);
        assertEquals("coin lk-1", first.runs().stream().filter(Inline.CrossReference.class::isInstance)
                .map(Inline.CrossReference.class::cast).map(r -> r.kind() + " " + r.id()).findFirst().orElseThrow());
        assertEquals(3, ((Prose.Items) chapter.blocks().get(3)).start());
        assertEquals(List.of("left", "right"), ((Prose.Table) chapter.blocks().get(4)).align());
        Prose.Picture picture = (Prose.Picture) chapter.blocks().get(5);
        assertEquals("photographs/site.jpg The harbour Seen from the north",
                picture.path() + " " + picture.alternative() + " " + Inline.plain(picture.caption().orElseThrow().runs()));
    }

    @Test
    void footnotesAreNumberedAsTheyAreCalled() {
        assertEquals(List.of("1: So the hoard. Or not. (3:22)", "2: See “above”. (7:5)"), notes("""
                # History

                The mint opened late.[^hoard] It

                | Die | Coins |
                | --- | --- |
                | O1[^B] | 3 |

                [^b]: See "above".
                [^hoard]: So the hoard.

                    Or not.
                """));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "# Title[^1]              | A heading cannot call a footnote",
        "# T\\n\\n## Part[^1]      | A heading cannot call a footnote",
        "# T\\n\\nA.[^2]\\n\\n[^2]: B.[^1] | A footnote cannot call a footnote",
        "# T\\n\\nA.[^1]\\n\\n[^1]: - a list | A footnote has paragraphs only",
    })
    void whereNoFootnoteStandsItIsRefused(String written, String said) {
        Map<String, String> files = Trees.sound();
        files.put("chapters/history.md", written.replace("\\n", "\n") + "\n\n[^1]: The text.\n");
        String findings = Trees.shown(Trees.read(PicturedTree.of(files)).findings());
        assertTrue(findings.contains(said), findings);
    }

    @Test
    void anEntryHasNoFootnotes() {
        String yaml = "id: owl\nmint: lampron\ndenomination: Drachm\nmetal: silver\nnote: |\n  Rare.[^1]\n";
        String findings = Trees.shown(Trees.read(Trees.with("types/owl.yaml", yaml)).findings());
        assertTrue(findings.contains("An entry cannot call a footnote, as “[^1]” would."), findings);
    }

    private static List<String> notes(String chapter) {
        Map<String, String> files = Trees.sound();
        files.put("chapters/history.md", chapter);
        Loaded loaded = Trees.read(PicturedTree.of(files));
        assertEquals("", Trees.shown(loaded.findings()));
        List<String> notes = new ArrayList<>();
        for (Prose block : loaded.catalogue().orElseThrow().chapters().get("chapters/history.md").blocks()) {
            List<Inline> runs = block instanceof Prose.Paragraph paragraph ? paragraph.runs()
                    : block instanceof Prose.Table table ? table.rows().get(0).get(0) : List.of();
            runs.stream().filter(Inline.Footnote.class::isInstance).map(Inline.Footnote.class::cast).forEach(note ->
                    notes.add(note.number() + ": " + Inline.plain(note.runs()) + " (" + note.place().line() + ":"
                            + note.place().column() + ")"));
        }
        return notes;
    }
}
