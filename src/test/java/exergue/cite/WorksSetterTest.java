package exergue.cite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Golden;
import exergue.finding.Findings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Works of a reference manager in the style of the program, and in others. */
class WorksSetterTest {

    private static final Path APPROVED = Path.of("src/test/resources/golden/cite");
    private static final String HEAD = "<style xmlns=\"http://purl.org/net/xbiblio/csl\" class=\"in-text\" version=\"1.0\">\n";
    private static final String LIST = "<bibliography><layout><text macro=\"a\"/></layout></bibliography>\n</style>\n";
    private static final String BOOK = "@book{hallam, shorthand = {Hallam}, author = {R. Hallam}, title = {Coins of the Coast}, year = 1931}";

    private static Setting both() {
        return new Setting().withFile("works.bib", "works.bib").withFile("works.json", "works.json");
    }

    @Test
    void theStyleOfTheProgram() {
        Golden.check(APPROVED.resolve("author-date/list.txt"), both().list());
    }

    @Test
    void aStyleTheAuthorBrings() throws IOException {
        Golden.check(APPROVED.resolve("own-style/list.txt"),
                both().inStyle(Files.readString(Setting.WORKS.resolve("notes-first.csl"))).list());
    }

    @Test
    void titlesStandInTheQuotationMarksOfTheHouse() {
        String list = both().with("house-style.yaml", "quotation-marks: {open: «, close: », inner-open: ‹, inner-close: ›}\n").list();
        assertTrue(list.contains("«The cast coinage of the Hyrmantes valley», *Annals"), list);
    }

    @Test
    void worksOfYamlAreNotForTheStyle() {
        SetWorks set = new Setting().with("works.yaml", "hallam: {sign: Hallam, title: Coins of the Coast}\n").set();
        assertEquals(Map.of(), set.full());
    }

    @ParameterizedTest
    @CsvSource({"1, 1st", "2, 2nd", "3, 3rd", "11, 11th", "12, 12th", "22, 22nd", "113, 113th"})
    void editionsHaveTheirEndings(String edition, String printed) {
        String list = new Setting().with("works.bib", BOOK.replace("year", "edition = " + edition + ", year")).list();
        assertEquals("Hallam | R. Hallam (1931), *Coins of the Coast*, " + printed + " edition.\n", list);
    }

    /** The rules of BibTeX names as Patashnik, BibTeXing (1988), section 4, has them; his examples, from memory. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"Per Brinch Hansen | Per Brinch Hansen", "Brinch Hansen, Per | Per Brinch Hansen",
            "Charles Louis Xavier Joseph de la Vall{\\'e}e Poussin | Charles Louis Xavier Joseph de la Vallée Poussin",
            "Ludwig van Beethoven | Ludwig van Beethoven", "van Beethoven, Ludwig | Ludwig van Beethoven",
            "Ford, Jr., Henry | Henry Ford Jr.", "Donald~E. Knuth | Donald E. Knuth",
            "{Barnes and Noble, Inc.} | Barnes and Noble, Inc.", "G{\\\"o}del, Kurt and Nov{\\'a}k, Jan | Kurt Gödel and Jan Novák"})
    void namesOfBibtex(String written, String printed) {
        String list = new Setting().with("works.bib", BOOK.replace("R. Hallam", written)).list();
        assertEquals("Hallam | " + printed + " (1931), *Coins of the Coast*.\n", list);
    }

    /** The item that the CSL-JSON pages of the CSL project show, from memory. */
    @Test
    void theExampleItemOfCslJsonFromMemory() {
        String item = """
                [{"id": "gettier63", "type": "article-journal", "title": "Is Justified True Belief Knowledge?", "title-short": "Gettier",
                  "author": [{"family": "Gettier", "given": "Edmund L."}], "issued": {"date-parts": [[1963, 6]]},
                  "container-title": "Analysis", "volume": "23", "issue": "6", "page": "121-123"}]
                """;
        assertEquals("Gettier | Edmund L. Gettier (1963), “Is Justified True Belief Knowledge?”, *Analysis* 23 (6), pp. 121–123.\n",
                new Setting().with("works.json", item).list());
    }

    static Map<String, String> hostile() {
        String twice = "";
        for (int i = 0; i < 60; i++) {
            twice += "<macro name=\"" + (i == 0 ? "a" : "m" + i) + "\"><text macro=\"m" + (i + 1) + "\"/><text macro=\"m" + (i + 1)
                    + "\"/></macro>\n";
        }
        return Map.of(
                "other-files", "<?xml version=\"1.0\"?>\n<!DOCTYPE style [<!ENTITY x SYSTEM \"file:///etc/hostname\">]>\n" + HEAD
                        + "<macro name=\"a\"><text value=\"&x;\"/></macro>\n" + LIST,
                "entities-in-entities", "<!DOCTYPE style [<!ENTITY x \"ha\"><!ENTITY y \"&x;&x;\">]>\n" + HEAD
                        + "<macro name=\"a\"><text value=\"&y;\"/></macro>\n" + LIST,
                "in-a-circle", HEAD + "<macro name=\"a\"><text macro=\"b\"/></macro>\n<macro name=\"b\"><text macro=\"a\"/></macro>\n" + LIST,
                "twice-over", HEAD + twice + "<macro name=\"m60\"><text variable=\"title\"/></macro>\n" + LIST,
                "too-deep", HEAD + "<macro name=\"a\">" + "<group>".repeat(5_000) + "</group>".repeat(5_000) + "</macro>\n" + LIST,
                "only-refers", HEAD + "<info><link href=\"http://www.zotero.org/styles/annals\" rel=\"independent-parent\"/></info></style>",
                "no-list", HEAD + "<citation><layout><text variable=\"title\"/></layout></citation></style>",
                "no-such-macro", HEAD + "<macro name=\"b\"><text variable=\"title\"/></macro>\n" + LIST,
                "not-a-style", "<html><body>Not found</body></html>",
                "not-xml", HEAD + "<macro name=\"a\"><text variable=\"title\"></macro>\n" + LIST);
    }

    @ParameterizedTest
    @ValueSource(strings = {"other-files", "entities-in-entities", "in-a-circle", "twice-over", "too-deep", "only-refers", "no-list",
            "no-such-macro", "not-a-style", "not-xml"})
    void aBadStyleIsSaidAndNotRun(String name) {
        SetWorks set = new Setting().with("works.bib", BOOK).inStyle(hostile().get(name)).set();
        assertEquals(Map.of(), set.full());
        Golden.check(APPROVED.resolve(name).resolve("findings.txt"), Setting.words(set.findings()));
    }

    /** The library does not know every way in which a style can be wrong; whatever it throws becomes a finding. */
    @Test
    void whatTheLibraryStumblesOverIsAFinding() {
        String style = HEAD + "<bibliography><layout><date variable=\"issued\"><date-part/></date></layout></bibliography></style>";
        Findings findings = new Setting().with("works.bib", BOOK).inStyle(style).set().findings();
        assertEquals("not-a-citation-style", findings.all().get(0).code().id());
    }

    @Test
    void manyWorksAreSet() {
        StringBuilder works = new StringBuilder();
        for (int i = 0; i < 1_000; i++) {
            works.append(BOOK.replace("{hallam", "{hallam" + i)).append('\n');
        }
        SetWorks set = new Setting().with("works.bib", works.toString()).set();
        assertEquals(1_000, set.full().size());
    }
}
