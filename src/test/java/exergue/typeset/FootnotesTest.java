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
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;

class FootnotesTest {

    private static final int NOTES = 120;
    private static final String BUSY = "The dies of the second issue were cut by several hands, and the order in which they were used is not "
            + "known for every one of them";

    private static String html(Inline... runs) {
        return new Markup(new FootOfPage()).of(List.of(runs)).replaceAll(" (?:id|href)=\"[^\"]*\"", "")
                .replaceAll("<span class=\"footnote\">.*?</span></span>", "@");
    }

    private static Inline note(int number) {
        return new Inline.Footnote(number, SampleBook.words("Note " + number + "."), SampleBook.PLACE);
    }

    @Test
    void theFiguresAreLettersOfTheWordAndTheNoteFollowsWhatTouchesThem() {
        assertEquals("<a><span>dies¹²</span></a>@<span> of</span>", html(new Words("dies"), note(12), new Words(" of")));
        assertEquals("<a><span>dies¹,</span></a>@<span> and</span>", html(new Words("dies"), note(1), new Words(", and")));
        assertEquals("<span><a><span>dies¹\u202F²</span></a></span>@@", html(new Words("dies"), note(1), note(2)));
        assertEquals("<span>see </span><a><i>Corpus¹.</i></a>@", html(new Words("see "), new Emphasis(SampleBook.words("Corpus")), note(1), new Words(".")));
        assertEquals("<span><a><span>dies¹,²</span></a></span>@@<span> so</span>", html(new Words("dies"), note(1), new Words(","), note(2), new Words(" so")));
        assertEquals("<a><span>dies¹</span></a>@<br/><span>so</span>", html(new Words("dies"), note(1), new Inline.LineBreak(), new Words("so")));
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

    /** From the word that calls a note to the note, and from its number back, on the page where both are. */
    @Test
    void callAndNoteAreLinkedBothWays() throws Exception {
        List<Prose> blocks = new ArrayList<>();
        for (int number = 1; number <= 40; number++) {
            blocks.add(new Prose.Paragraph(List.of(new Words(BUSY + " so"), note(number), new Words(", here. " + BUSY)), SampleBook.PLACE));
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Book book = new Book("en", SampleBook.of(2, 4).title(), List.of(), List.of(new Part.Text("dies", SampleBook.words("Dies"), blocks)), List.of());
        assertEquals(List.of(), Typesetter.typeset(book, SampleBook.setting(), out).findings().all());
        int links = 0;
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                for (PDAnnotation annotation : document.getPage(page).getAnnotations()) {
                    PDPageXYZDestination to = (PDPageXYZDestination) ((PDActionGoTo) ((PDAnnotationLink) annotation).getAction()).getDestination();
                    assertEquals(page, to.retrievePageNumber());
                    boolean call = annotation.getRectangle().getLowerLeftY() > to.getTop();
                    boolean back = annotation.getRectangle().getLowerLeftY() < to.getTop() - 1;
                    assertTrue(call || back, annotation.getRectangle() + " to " + to.getTop());
                    links += annotation.getRectangle().getWidth() > 1 ? 1 : 0; // the engine makes one of no width for each call
                }
            }
        }
        assertEquals(80, links);
        assertEquals(List.of(), VeraPdf.failures(out.toByteArray(), PDFAFlavour.PDFUA_1));
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
