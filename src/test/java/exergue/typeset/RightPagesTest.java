package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.edition.Book;
import exergue.edition.Part;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Parts that open on a right-hand page do, and the pages left blank for it are blank. */
class RightPagesTest {

    /** @param lengths of the parts, in paragraphs */
    @Property(tries = 8)
    void whatOpensOnTheRightDoesAfterAPageThatIsBlank(@ForAll("lengths") List<Integer> lengths) throws Exception {
        List<Part> parts = new ArrayList<>();
        lengths.forEach(length -> parts.add(new Part.Text("part-" + parts.size(), SampleBook.words("Heading" + parts.size()), SampleBook.prose(length))));
        List<String> onRight = IntStream.range(0, parts.size()).filter(part -> part % 3 != 1).mapToObj(part -> "part-" + part).toList();
        Book book = new Book("en", SampleBook.title(), List.of(new Part.TitlePage("title")), parts.subList(0, 2), parts.subList(2, parts.size()), onRight);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        TypesetBook set = Typesetter.typeset(book, SampleBook.setting(), out);
        assertEquals(List.of(), set.findings().all());
        onRight.forEach(part -> assertTrue(isRight(set.pages().folio(part).orElseThrow()), part + " on " + set.pages().folios()));
        List<String> pages = pages(out.toByteArray());
        for (int page = 0; page < pages.size(); page++) {
            if (pages.get(page).isBlank()) {
                assertTrue(page % 2 == 1 && pages.get(page + 1).contains("Heading"), "page " + page + " is blank for nothing");
            }
        }
        assertEquals(List.of(), VeraPdf.failures(out.toByteArray(), PDFAFlavour.PDFUA_1));
    }

    private static boolean isRight(String folio) {
        return Integer.parseInt(folio) % 2 == 1;
    }

    @Provide
    Arbitrary<List<Integer>> lengths() {
        return Arbitraries.of(1, 2, 7, 8, 15).list().ofMinSize(3).ofMaxSize(6);
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
