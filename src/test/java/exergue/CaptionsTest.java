package exergue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.edition.Book;
import exergue.edition.Part;
import exergue.files.Tree;
import exergue.finding.Finding;
import exergue.model.Caption;
import exergue.model.Inline;
import exergue.model.Prose;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Captions on their road from a chapter to the book: numbered, referred to, listed. */
class CaptionsTest {

    private static final String TABLE = "\n\n| Die | Coins |\n| --- | --: |\n| O1 | 3 |\n";

    private static Map<String, String> files() {
        Map<String, String> files = new TreeMap<>();
        files.put("catalogue.yaml", "title: Coins\nlanguage: en\nparts:\n  front: [lists]\n"
                + "  body: [chapters/first.md, catalogue, chapters/second.md]\n"
                + "pictures: [{picture: chapters/site.jpg, credit: the author, permission: not needed}]\n");
        files.put("house-style.yaml", "indexes: {cross-references: numbers}\n");
        files.put("conventions.yaml", "bench: {title: at the bench}\n");
        files.put("mints.yaml", "lampron: {name: Lampron}\n");
        files.put("types/owl.yaml", "id: owl\nmint: lampron\ndenomination: Drachm\nmetal: silver\n"
                + "obverse: {description: 'Owl, as in Figure [figure:site].'}\nreverse: {description: Branch.}\n");
        files.put("coins/lk-1.yaml", "id: lk-1\ntype: owl\nmeasured: {by: bench, weight: 3.87 g}\n");
        files.put("chapters/first.md", "# First\n\nSee Table [table:late] and Table [table:dies].\n\nTable: Of *no* id" + TABLE
                + "\n> Table [dies]: In a quotation[^1]\n>\n> | Die | Coins |\n> | --- | --: |\n> | O1 | 3 |\n"
                + "\n| No | Caption |\n| --- | --- |\n| a | b |\n\n[^1]: A note.\n");
        files.put("chapters/second.md", "# Second\n\nTable [late]: Of no. [coin:lk-1]" + TABLE
                + "\nFigure [site]: The site\n![A hill](site.jpg)\n\n![Another hill](site.jpg \"Titled\")\n\n![No caption](site.jpg)\n");
        return files;
    }

    private static Tree tree(Map<String, String> files) {
        files.put("chapters/site.jpg", "a picture");
        return PicturedTree.of(files);
    }

    private static Book book(Map<String, String> files) throws IOException {
        Exergue.Checked checked = Exergue.check(tree(files), Progress.SILENT);
        assertEquals(List.of(), checked.findings().all().stream().filter(finding -> finding.place().file().endsWith(".md"))
                .map(Finding::what).toList());
        return checked.book().orElseThrow();
    }

    private static List<String> captions(List<Prose> blocks) {
        List<String> captions = new ArrayList<>();
        for (Prose block : blocks) {
            if (block instanceof Prose.Quotation quotation) {
                captions.addAll(captions(quotation.blocks()));
            } else if (block instanceof Prose.Captioned captioned) {
                captions.add(captioned.caption().map(caption -> caption.label().map(Caption.Label::words).orElse("–") + ": "
                        + Inline.plain(caption.runs()) + " #" + caption.label().orElseThrow().anchor()).orElse("none"));
            }
        }
        return captions;
    }

    @Test
    void tablesAndFiguresAreNumberedThroughTheBook() throws IOException {
        Book book = book(files());
        assertEquals(List.of("Table\u00A01: Of no id #table..1", "Table\u00A02: In a quotation #table.dies", "none"),
                captions(((Part.Text) book.body().get(0)).blocks()));
        assertEquals(List.of("Table\u00A03: Of no. 1 #table.late", "Fig.\u00A01: The site #figure.site",
                "Fig.\u00A02: Titled #figure..2", "none"), captions(((Part.Text) book.body().get(2)).blocks()));
    }

    @Test
    void anyTextRefersToThemByTheirNumbers() throws IOException {
        Book book = book(files());
        assertEquals("See Table 3 and Table 2.", Inline.plain(((Prose.Paragraph) ((Part.Text) book.body().get(0)).blocks().get(0)).runs()));
        assertTrue(book.body().get(1).toString().contains("Link[address=#figure.site, runs=[Words[text=1]]]"), book.body().get(1)::toString);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "en | Tables and figures  | Tables: Table~1, Table~2, Table~3             | Figures: Fig.~1, Fig.~2",
        "fr | Tableaux et figures | Tableaux: Tableau~1, Tableau~2, Tableau~3     | Figures: Fig.~1, Fig.~2",
        "de | Tabellen und Abbildungen | Tabellen: Tabelle~1, Tabelle~2, Tabelle~3 | Abbildungen: Abb.~1, Abb.~2",
        "it | Tabelle e figure    | Tabelle: Tabella~1, Tabella~2, Tabella~3      | Figure: Fig.~1, Fig.~2"})
    void theyAreListedInTheLanguageOfTheBook(String language, String heading, String tables, String figures) throws IOException {
        Map<String, String> files = files();
        files.computeIfPresent("catalogue.yaml", (path, text) -> text.replace("language: en", "language: " + language));
        Part.Lists lists = (Part.Lists) book(files).front().get(0);
        assertEquals(heading, Inline.plain(lists.heading()));
        assertEquals(List.of(tables, figures), lists.lists().stream().map(list -> list.heading() + ": " + String.join(", ",
                list.things().stream().map(thing -> thing.label().replace('\u00A0', '~')).toList())).toList());
        assertEquals("[Words[text=In a quotation]]", lists.lists().get(0).things().get(1).words().toString());
        assertEquals("[Words[text=Of no. ], Words[text=1]]", lists.lists().get(0).things().get(2).words().toString());
    }

    @Test
    void aBookWithoutThemHasNoLists() throws IOException {
        Map<String, String> files = files();
        files.put("chapters/first.md", "# First\n\nNothing.\n");
        files.put("chapters/second.md", "# Second\n\nNothing.\n");
        files.computeIfPresent("types/owl.yaml", (path, text) -> text.replace(", as in Figure [figure:site]", ""));
        assertEquals(List.of(), book(files).front());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "See [table:dyes].   | There is no table “dyes” in the chapters of the book. Did you mean “dies”? Otherwise begin the caption of the "
            + "table with “Table [dyes]:”.",
        "See [figure:dies].  | There is no figure “dies” in the chapters of the book. Begin the caption of the figure with “Figure [dies]:”.",
        "Table: None follows | This paragraph begins like the caption of a table, but no table follows it. Put it directly before its table, or "
            + "begin it otherwise."})
    void whatLeadsNowhereIsSaid(String written, String said) throws IOException {
        Map<String, String> files = files();
        files.put("chapters/second.md", "# Second\n\n" + written + "\n");
        files.computeIfPresent("types/owl.yaml", (path, text) -> text.replace(", as in Figure [figure:site]", ""));
        files.computeIfPresent("chapters/first.md", (path, text) -> text.replace("Table [table:late] and ", ""));
        Exergue.Checked checked = Exergue.check(tree(files), Progress.SILENT);
        assertEquals(List.of(said), checked.findings().all().stream().filter(f -> f.place().file().equals("chapters/second.md"))
                .map(f -> f.what() + " " + f.remedy()).toList());
    }

    @Test
    void theNoteOfAnEntryHasNoNumberedTables() throws IOException {
        Map<String, String> files = files();
        files.merge("coins/lk-1.yaml", "note: |\n  Table: Of this coin\n\n  | Hand | g |\n  | --- | --- |\n  | A | 3.87 |\n", String::concat);
        assertEquals(List.of("The tables and pictures of an entry’s note have no numbers, so this is no caption."),
                Exergue.check(tree(files), Progress.SILENT).findings().all().stream()
                        .filter(f -> f.code().id().equals("caption-alone")).map(Finding::what).toList());
    }
}
