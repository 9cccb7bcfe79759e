package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import exergue.edition.Book;
import exergue.edition.EntryBlock;
import exergue.edition.EntryBlock.Entry;
import exergue.edition.Part;
import exergue.edition.Specimen;
import exergue.model.HouseStyle.Rows;
import exergue.model.Inline;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a reader copies out of the PDF is what stands in the book. */
class ReadBackTest {

    @ParameterizedTest
    @EnumSource(Rows.class)
    void everyMeasurementLineAndLegendComesBack(Rows rows) throws Exception {
        Book book = SampleBook.of(24, 160);
        String text = text(book, SampleBook.setting(SampleBook.tree(), rows));
        List<String> lost = new ArrayList<>();
        for (Part part : book.body()) {
            if (part instanceof Part.Entries entries) {
                entries.blocks().forEach(block -> check(block, rows == Rows.RUNNING, text, lost));
            }
        }
        assertEquals(List.of(), lost);
        assertFalse(text.contains("#"), "the engine prints # where it has no letter");
    }

    private static void check(EntryBlock block, boolean running, String text, List<String> lost) {
        if (block instanceof Entry entry) {
            entry.sides().forEach(side -> side.legend().ifPresent(legend -> expect(legend, text, lost)));
            boolean several = entry.specimens().size() > 1;
            for (Specimen coin : entry.specimens()) {
                expect((several ? coin.number() + " " : "") + (running ? coin.line() : inColumns(coin))
                        + (running && !coin.dies().isEmpty() ? "; " : " ") + coin.dies(), text, lost);
                expect(Inline.plain(coin.remarks()), text, lost);
            }
        }
    }

    /** Columns need no separators. */
    private static String inColumns(Specimen coin) {
        return coin.cells().stream().map(Specimen.Cell::text).collect(Collectors.joining(" "));
    }

    private static void expect(String wanted, String text, List<String> lost) {
        if (!text.contains(even(wanted))) {
            lost.add(even(wanted));
        }
    }

    private static String text(Book book, Setting setting) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertEquals(List.of(), Typesetter.typeset(book, setting, out).findings().all());
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            return even(new PDFTextStripper().getText(document));
        }
    }

    /** All spaces alike and single, since how wide they are is layout. */
    private static String even(String text) {
        return text.replaceAll("[\\s\\u2007\\u202F\\u00A0\\u2002]+", " ").strip();
    }
}
