package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.edition.Book;
import exergue.edition.PageMap;
import exergue.edition.Roman;
import exergue.edition.Part;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Folios as printed, as page labels and as the page map says; where the body opens. */
class FoliosTest {

    private record SetBook(PageMap map, List<String> labels, List<String> texts) { }

    private static SetBook set(List<Part> front) throws IOException {
        Book sample = SampleBook.of(4, 8);
        Book book = new Book("en", SampleBook.title(), front, sample.body(), sample.back());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        TypesetBook set = Typesetter.typeset(book, SampleBook.setting(), out);
        assertEquals(List.of(), set.findings().all());
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            List<String> texts = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper reader = new PDFTextStripper();
                reader.setStartPage(page);
                reader.setEndPage(page);
                texts.add(reader.getText(document).strip());
            }
            return new SetBook(set.pages(),
                    List.of(document.getDocumentCatalog().getPageLabels().getLabelsByPageIndices()), texts);
        }
    }

    private static Part contents() {
        return new Part.Contents("contents", SampleBook.words("Contents"));
    }

    @Test
    void oddFrontMatterIsFollowedByABlankPage() throws IOException {
        SetBook set = set(List.of(new Part.TitlePage("title"), new Part.Imprint("imprint"), contents()));
        assertEquals(List.of("i", "ii", "iii", "iv", "1", "2"), set.labels().subList(0, 6));
        assertEquals("", set.texts().get(3), "nothing stands on the blank page, not even a folio");
        assertEquals("1", set.map().folio("introduction").orElseThrow());
        assertEquals("iii", set.map().folio("contents").orElseThrow());
        assertEquals(set.texts().size(), set.map().pages());
    }

    @Test
    void evenFrontMatterIsNot() throws IOException {
        SetBook set = set(List.of(new Part.TitlePage("title"), contents()));
        assertEquals(List.of("i", "ii", "1"), set.labels().subList(0, 3));
        assertEquals("1", set.map().folio("introduction").orElseThrow());
    }

    @Test
    void aBookMayHaveNoFrontMatter() throws IOException {
        assertEquals("1", set(List.of()).labels().get(0));
    }

    @Test
    void everyPageHasTheFolioOfItsLabelExceptTitleAndImprint() throws IOException {
        SetBook set = set(SampleBook.of(4, 8).front());
        for (int page = 2; page < set.texts().size(); page++) {
            List<String> lines = set.texts().get(page).lines().toList();
            assertEquals(set.labels().get(page), lines.get(lines.size() - 1).strip(), "page " + page);
        }
    }

    @Test
    void theContentsSayWhatThePageMapSays() throws IOException {
        SetBook set = set(SampleBook.of(4, 8).front());
        for (String line : set.texts().get(2).lines().filter(line -> line.contains(" .")).toList()) {
            String heading = line.substring(0, line.indexOf(" .")).strip();
            String folio = line.substring(line.lastIndexOf(' ') + 1);
            String id = switch (heading) {
                case "Preface" -> "preface";
                case "Catalogue" -> "catalogue";
                case "Works cited" -> "works";
                case "The coinage of the Arethan league" -> "introduction";
                case "Arethe" -> "mint-0";
                case "Thalara" -> "mint-3";
                default -> "";
            };
            if (!id.isEmpty()) {
                assertEquals(set.map().folio(id).orElseThrow(), folio, heading);
            }
        }
    }

    @Test
    void headsNameWhatIsOnThePage() throws IOException {
        SetBook set = set(SampleBook.of(4, 8).front());
        int catalogue = 4 + Integer.parseInt(set.map().folio("catalogue").orElseThrow());
        assertEquals("5–35 Coins of the Arethan League", beforeLast(set.texts().get(catalogue)));
        assertEquals("Thalara, Nikaron II 36", beforeLast(set.texts().get(catalogue + 1)));
    }

    /** Heads are printed over the finished page: first the head, then the folio. */
    private static String beforeLast(String text) {
        List<String> lines = text.lines().toList();
        return lines.get(lines.size() - 2).strip();
    }

    @ParameterizedTest
    @CsvSource({"1,i", "4,iv", "9,ix", "14,xiv", "40,xl", "99,xcix", "444,cdxliv", "1990,mcmxc"})
    void romanFigures(int number, String roman) {
        assertEquals(roman, Roman.of(number));
    }
}
