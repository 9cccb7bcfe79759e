package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.edition.Book;
import exergue.edition.Part;
import exergue.model.Caption;
import exergue.model.Inline;
import exergue.model.Prose;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** Tables that go over a page: two rows at least at its foot, two under the repeated head of the next, and no head or heading without rows. */
class TableBreaksTest {

    private static final int TABLES = 150;
    private static final int ROWS = 14;

    /** Tables begin at every height of the page; every second has a caption, the others a heading. */
    private static Book book() {
        List<Prose> blocks = new ArrayList<>();
        for (int number = 1; number <= TABLES; number++) {
            for (int line = 0; line < number * 7 % 31; line++) {
                blocks.add(new Prose.Paragraph(SampleBook.words("A line."), SampleBook.PLACE));
            }
            int its = number;
            List<List<List<Inline>>> rows = IntStream.rangeClosed(1, ROWS)
                    .mapToObj(row -> List.of(SampleBook.words("row" + its + "x" + row + "."), SampleBook.words("" + row))).toList();
            Optional<Caption> caption = number % 2 == 0 ? Optional.empty()
                    : Optional.of(Caption.of(Caption.Kind.TABLE, SampleBook.words("title" + number + ".")));
            if (caption.isEmpty()) {
                blocks.add(new Prose.Heading(2, SampleBook.words("title" + number + "."), SampleBook.PLACE));
            }
            blocks.add(new Prose.Table(List.of("left", "right"), List.of(SampleBook.words("Rows"), SampleBook.words("No.")), rows, caption,
                    SampleBook.PLACE));
        }
        return new Book("en", SampleBook.title(), List.of(), List.of(new Part.Text("text", SampleBook.words("Text"), blocks)), List.of());
    }

    private static List<String> pages() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertEquals(List.of(), Typesetter.typeset(book(), SampleBook.setting(), out).findings().all());
        List<String> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setSortByPosition(true);
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document));
            }
        }
        return pages;
    }

    @Test
    void noRowStandsAloneAndNoHeadWithoutRows() throws Exception {
        List<String> pages = pages();
        int broken = 0;
        for (int number = 1; number <= TABLES; number++) {
            int first = pageOf("row" + number + "x1.", pages);
            int last = pageOf("row" + number + "x" + ROWS + ".", pages);
            assertEquals(first, pageOf("title" + number + ".", pages), "title of table " + number);
            assertEquals(first, pageOf("row" + number + "x2.", pages), "second row of table " + number);
            assertEquals(last, pageOf("row" + number + "x" + (ROWS - 1) + ".", pages), "last row but one of table " + number);
            broken += first == last ? 0 : 1;
            assertTrue(first == last || pages.get(last).matches("(?s).*Rows No\\.\\s+row" + number + "x.*"),
                    "no head over the rest of table " + number + ":\n" + pages.get(last));
        }
        assertTrue(broken > 10, "only " + broken + " tables go over a page");
        for (String page : pages) {
            assertTrue(page.lines().noneMatch(line -> line.startsWith("Rows")) || !page.stripTrailing().matches("(?s).*Rows No\\.\\s+\\d*$"), page);
        }
    }

    private static int pageOf(String word, List<String> pages) {
        return IntStream.range(0, pages.size()).filter(page -> pages.get(page).contains(word)).findFirst()
                .orElseThrow(() -> new AssertionError(word + " is nowhere"));
    }
}
