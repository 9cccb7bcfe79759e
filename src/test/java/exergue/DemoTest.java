package exergue;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Exergue.Checked;
import exergue.Exergue.Made;
import exergue.Exergue.Publication;
import exergue.edition.DataRow;
import exergue.exchange.CatalogueCsv;
import exergue.exchange.CatalogueJson;
import exergue.files.FolderTree;
import exergue.files.MemoryTree;
import exergue.files.Tree;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The demo catalogue from its folder to the finished book, looked at from outside. */
class DemoTest {

    private static final Path SOURCE = Path.of("catalogue-src");

    private static Checked checked;
    private static Made made;
    private static byte[] pdf;
    private static Publication publication;

    @BeforeAll
    static void make() throws IOException {
        checked = TestDarkroom.checked(new FolderTree(SOURCE));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        made = Exergue.typeset(checked, out, Progress.SILENT);
        pdf = out.toByteArray();
        publication = made.publication().orElseThrow(() -> new AssertionError(made.findings().all().toString()));
    }

    @Test
    void itHasWhatTheDemoPromises() {
        var catalogue = checked.catalogue().orElseThrow();
        assertTrue(catalogue.coins().size() >= 120, catalogue.coins().size() + " coins");
        assertTrue(catalogue.types().size() >= 30, catalogue.types().size() + " types");
        assertTrue(catalogue.types().stream().map(type -> type.metal().value()).distinct().count() >= 3);
        assertTrue(catalogue.conventions().size() >= 4);
        assertTrue(catalogue.title().notice().isPresent(), "the title page says that all of it is invented");
    }

    @Test
    void everyCoinHasOneRowAndANumberOfItsOwn() {
        assertEquals(checked.catalogue().orElseThrow().coins().size(), publication.rows().size());
        Set<String> numbers = new HashSet<>();
        publication.rows().forEach(row -> assertTrue(numbers.add(row.number()), "twice: " + row.number()));
    }

    @Test
    void everyMeasurementLineReadsBackFromThePageThatTheDataName() throws IOException {
        Map<String, String> pages = pages();
        List<String> lost = new ArrayList<>();
        for (DataRow row : publication.rows()) {
            String text = pages.getOrDefault(row.page().orElse("none"), "");
            String line = row.number() + " " + row.line().replace(", ", " "); // columns have no separators
            if (!text.contains(plain(line))) {
                lost.add(row.id() + " “" + line + "” on page " + row.page().orElse("none"));
            }
        }
        assertEquals(List.of(), lost);
    }

    @Test
    void noLetterIsLost() throws IOException {
        String all = String.join("", pages().values());
        assertFalse(all.contains("#"), "the engine prints # for what its face lacks");
        assertFalse(all.contains("\uFFFD"));
    }

    @Test
    void theSameSourceGivesTheSameBytesWhateverTheOrderOnTheDisk() throws IOException {
        Tree folder = new FolderTree(SOURCE);
        List<String> files = new ArrayList<>(folder.files());
        Collections.reverse(files);
        Map<String, byte[]> contents = new LinkedHashMap<>();
        for (String file : files) {
            contents.put(file, folder.read(file));
        }
        Checked again = TestDarkroom.checked(new MemoryTree(contents));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Publication second = Exergue.typeset(again, out, Progress.SILENT).publication().orElseThrow();
        assertArrayEquals(pdf, out.toByteArray());
        assertEquals(CatalogueJson.of(publication.rows()), CatalogueJson.of(second.rows()));
        assertEquals(CatalogueCsv.of(publication.rows()), CatalogueCsv.of(second.rows()));
    }

    /** Text of every page by its printed number, without any space or asterisk. */
    private static Map<String, String> pages() throws IOException {
        Map<String, String> pages = new LinkedHashMap<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String[] labels = document.getDocumentCatalog().getPageLabels().getLabelsByPageIndices();
            assertEquals(document.getNumberOfPages(), Arrays.stream(labels).distinct().count(), "page labels");
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.put(labels[page - 1], plain(stripper.getText(document)));
            }
        }
        return pages;
    }

    private static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFC).replaceAll("[\\p{Z}\\s*]+", "");
    }
}
