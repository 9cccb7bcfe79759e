package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.edition.Book;
import exergue.edition.Part;
import exergue.model.Inline;
import exergue.model.Inline.Emphasis;
import exergue.model.Inline.Words;
import exergue.model.Prose;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class FootnotesTest {

    private static final int NOTES = 120;
    private static final String BUSY = "The dies of the second issue were cut by several hands, and the order in which they were used is not "
            + "known for every one of them";

    private static String html(Inline... runs) {
        return new Markup(new FootOfPage()).of(List.of(runs)).replaceAll("<span class=\"footnote\">.*?</span></span>", "@");
    }

    private static Inline note(int number) {
        return new Inline.Footnote(number, SampleBook.words("Note " + number + "."), SampleBook.PLACE);
    }

    @Test
    void theFiguresAreLettersOfTheWordAndTheNoteFollowsWhatTouchesThem() {
        assertEquals("<span>dies¹²</span>@<span> of</span>", html(new Words("dies"), note(12), new Words(" of")));
        assertEquals("<span>dies¹,</span>@<span> and</span>", html(new Words("dies"), note(1), new Words(", and")));
        assertEquals("<span>dies¹\u202F²</span>@@", html(new Words("dies"), note(1), note(2)));
        assertEquals("<span>see </span><i>Corpus¹.</i>@", html(new Words("see "), new Emphasis(SampleBook.words("Corpus")), note(1), new Words(".")));
        assertEquals("<span>dies¹,²</span>@@<span> so</span>", html(new Words("dies"), note(1), new Words(","), note(2), new Words(" so")));
        assertEquals("<span>dies¹</span>@<br/><span>so</span>", html(new Words("dies"), note(1), new Inline.LineBreak(), new Words("so")));
    }

    /** A word that ends a line, and a paragraph that ends a page, are where a note could go astray. */
    @Test
    void everyNoteIsPrintedOnceOnThePageThatCallsIt() throws Exception {
        List<Prose> blocks = new ArrayList<>();
        for (int number = 1; number <= NOTES; number++) {
            blocks.add(new Prose.Paragraph(List.of(new Words(BUSY.substring(0, 70 + number % 50) + "x"), note(number), new Words(", so. " + BUSY)),
                    SampleBook.PLACE));
        }
        Book sample = SampleBook.of(2, 4);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Book book = new Book("en", sample.title(), List.of(), List.of(new Part.Text("dies", SampleBook.words("Dies"), blocks)), List.of());
        assertEquals(List.of(), Typesetter.typeset(book, SampleBook.setting(), out).findings().all());
        List<String> pages = pages(out.toByteArray());
        FootOfPage figures = new FootOfPage();
        for (int number = 1; number <= NOTES; number++) {
            String call = "x" + figures.letters(number) + ",";
            String text = "Note " + number + ".";
            List<Integer> calling = where(pages, call);
            assertEquals(1, calling.size(), call);
            assertEquals(calling, where(pages, text), text);
        }
        assertTrue(pages.size() > 4, "too few pages to see anything");
    }

    @Test
    void aBrowserHasThemAfterTheTextWithALinkThereAndBack() throws Exception {
        Map<String, String> files = new TreeMap<>();
        WebBook.write(SampleBook.of(2, 4), SampleBook.setting(), Map.of(), List.of(),
                (path, bytes) -> files.put(path, new String(bytes, StandardCharsets.UTF_8)));
        String page = files.get("introduction.html");
        int call = page.indexOf("id=\"call.");
        assertTrue(call > 0, page);
        String id = page.substring(call + 9, page.indexOf('"', call + 4)).replace("call.", "");
        assertTrue(page.contains("href=\"#note." + id + "\" id=\"call." + id + "\" role=\"doc-noteref\">1</a></sup>"), id);
        int note = page.indexOf("<li id=\"note." + id + "\">");
        assertTrue(note > page.lastIndexOf("</sup>"), "the notes follow the text");
        assertTrue(page.indexOf("href=\"#call." + id + "\"", note) > note, "no link back");
    }

    private static List<Integer> where(List<String> pages, String words) {
        List<Integer> found = new ArrayList<>();
        for (int page = 0; page < pages.size(); page++) {
            for (int at = pages.get(page).indexOf(words); at >= 0; at = pages.get(page).indexOf(words, at + 1)) {
                found.add(page);
            }
        }
        return found;
    }

    private static List<String> pages(byte[] pdf) throws Exception {
        List<String> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document));
            }
        }
        return pages;
    }
}
