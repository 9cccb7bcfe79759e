package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.edition.Book;
import exergue.edition.EntryBlock;
import exergue.edition.Part;
import exergue.edition.Specimen;
import exergue.model.TemplateSet;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** In books of one entry a coin no entry is divided: its number, its figures and its last words are on one page. */
class SetBreaksTest {

    private static final int FRONT = 4;

    @ParameterizedTest
    @EnumSource(value = TemplateSet.class, names = {"COLLECTION", "EXCAVATION"})
    void noEntryIsDivided(TemplateSet set) throws Exception {
        Book book = SampleBook.of(120, 240);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        TypesetBook typeset = Typesetter.typeset(book, SampleBook.setting(set), out);
        assertEquals(List.of(), typeset.findings().all());
        List<String> pages = pages(out.toByteArray());
        List<String> divided = new ArrayList<>();
        int coins = 0;
        for (EntryBlock block : ((Part.Entries) book.body().get(1)).blocks()) {
            if (block instanceof EntryBlock.Entry entry) {
                for (Specimen coin : entry.specimens()) {
                    coins++;
                    String page = pages.get(FRONT - 1 + Integer.parseInt(typeset.pages().folio(coin.id()).orElseThrow()));
                    check(coin, page, divided);
                }
            }
        }
        assertEquals(List.of(), divided);
        assertTrue(coins == 240 && pages.size() > 20, coins + " coins, " + pages.size() + " pages");
    }

    private static void check(Specimen coin, String page, List<String> divided) {
        for (String words : List.of(coin.number(), coin.line(), coin.alone().found(), coin.alone().kept(),
                coin.alone().provenance())) {
            if (!page.contains(plain(words))) {
                divided.add("no. " + coin.number() + " without “" + words + "”");
            }
        }
    }

    /** Headings of mints and rulers stand on the page of the entry after them. */
    @ParameterizedTest
    @EnumSource(TemplateSet.class)
    void noHeadingIsLeftAtTheFootOfAPage(TemplateSet set) throws Exception {
        Book book = SampleBook.of(120, 240);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        TypesetBook typeset = Typesetter.typeset(book, SampleBook.setting(set), out);
        List<String> pages = pages(out.toByteArray());
        List<EntryBlock> blocks = ((Part.Entries) book.body().get(1)).blocks();
        for (int i = 0; i + 1 < blocks.size(); i++) {
            if (blocks.get(i) instanceof EntryBlock.IssueHeading issue && blocks.get(i + 1) instanceof EntryBlock.Entry entry) {
                String page = pages.get(FRONT - 1 + Integer.parseInt(
                        typeset.pages().folio(entry.specimens().get(0).id()).orElseThrow()));
                assertTrue(page.contains(plain(issue.name())), issue.name());
            }
        }
    }

    private static List<String> pages(byte[] pdf) throws Exception {
        List<String> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper reader = new PDFTextStripper();
                reader.setStartPage(page);
                reader.setEndPage(page);
                pages.add(plain(reader.getText(document)));
            }
        }
        return pages;
    }

    private static String plain(String text) {
        return text.replaceAll("[\\p{Z}\\s]+", "");
    }
}
