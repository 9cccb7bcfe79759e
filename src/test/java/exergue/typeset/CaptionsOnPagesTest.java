package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.edition.Book;
import exergue.edition.Part;
import exergue.model.Caption;
import exergue.model.Inline;
import exergue.model.Prose;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Numbered tables and figures, and the lists of them, on the printed page and for a browser. */
class CaptionsOnPagesTest {

    private static final int TABLES = 12;
    private static byte[] pdf;
    private static final List<String> PAGES = new ArrayList<>();

    private static Caption caption(Caption.Kind kind, int number, String words) {
        String label = kind == Caption.Kind.TABLE ? "Table " + number : "Fig. " + number;
        return Caption.of(kind, SampleBook.words(words)).numbered(new Caption.Label(number, kind.word() + ".." + number, label));
    }

    /** Tables of all lengths among paragraphs, so that some come to the foot of a page; a figure after every third. */
    private static Book book() {
        List<Prose> blocks = new ArrayList<>();
        List<Part.Listed> tables = new ArrayList<>();
        List<Part.Listed> figures = new ArrayList<>();
        for (int number = 1; number <= TABLES; number++) {
            blocks.addAll(SampleBook.prose(1 + number % 3));
            List<List<List<Inline>>> rows = new ArrayList<>();
            for (int row = 1; row <= 3 + 5 * (number % 4); row++) {
                rows.add(List.of(SampleBook.words("row " + row + " of " + number), SampleBook.words("" + row)));
            }
            Caption caption = caption(Caption.Kind.TABLE, number, "Counts of table " + number);
            blocks.add(new Prose.Table(List.of("left", "right"), List.of(SampleBook.words("Rows"), SampleBook.words("No.")), rows,
                    Optional.of(caption), SampleBook.PLACE));
            tables.add(new Part.Listed("table.." + number, "Table " + number, caption.runs()));
            if (number % 3 == 0) {
                Caption shown = caption(Caption.Kind.FIGURE, number / 3, "Picture " + number);
                blocks.add(new Prose.Picture("photographs/obv 3.jpg", "an obverse", Optional.of(shown), SampleBook.PLACE));
                figures.add(new Part.Listed("figure.." + number / 3, "Fig. " + number / 3, shown.runs()));
            }
        }
        Part lists = new Part.Lists("lists", SampleBook.words("Tables and figures"),
                List.of(new Part.ListedThings("Tables", tables), new Part.ListedThings("Figures", figures)));
        return new Book("en", SampleBook.title(), List.of(lists), List.of(new Part.Text("text", SampleBook.words("Text"), blocks)), List.of());
    }

    @BeforeAll
    static void set() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertEquals(List.of(), Typesetter.typeset(book(), SampleBook.setting(), out).findings().all());
        pdf = out.toByteArray();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setSortByPosition(true);
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                PAGES.add(stripper.getText(document));
            }
        }
    }

    @Test
    void theStandardsAreKept() throws Exception {
        assertEquals(List.of(), VeraPdf.failures(pdf, PDFAFlavour.PDFA_3_U));
        assertEquals(List.of(), VeraPdf.failures(pdf, PDFAFlavour.PDFUA_1));
    }

    /** The list and a blank page come before page 1. */
    @Test
    void theListGivesThePages() {
        for (int number = 1; number <= TABLES; number++) {
            int page = pageOf("Table " + number + ".\u2002");
            assertTrue(PAGES.get(0).matches("(?s).*Table " + number + " +Counts of table " + number + "[ .]* " + page + "\\R.*"),
                    number + " on " + page + " in " + PAGES.get(0));
        }
    }

    @Test
    void aCaptionStandsOnThePageOfTheFirstRowsAndOfThePicture() {
        for (int number = 1; number <= TABLES; number++) {
            assertEquals(pageOf("row 1 of " + number), pageOf("Table " + number + ".\u2002"), "table " + number);
            assertEquals(pageOf("row 2 of " + number), pageOf("Table " + number + ".\u2002"), "table " + number);
        }
    }

    private static int pageOf(String words) {
        for (int page = 1; page < PAGES.size(); page++) {
            if (PAGES.get(page).matches("(?s).*" + java.util.regex.Pattern.quote(words) + "\\b.*")) {
                return page - 1;
            }
        }
        throw new AssertionError(words + " is nowhere");
    }

    @Test
    void aBrowserFindsThemByTheirAnchors() throws Exception {
        Map<String, String> files = new TreeMap<>();
        WebBook.write(book(), SampleBook.setting(), Map.of(), List.of(),
                (path, bytes) -> files.put(path, new String(bytes, StandardCharsets.UTF_8)));
        assertTrue(files.get("text.html").contains("id=\"table..3\""), files.get("text.html"));
        assertTrue(files.get("lists.html").contains("<a href=\"text.html#table..3\">Table\u00A03</a> Counts of table\u00A03"), files.get("lists.html"));
    }
}
