package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.edition.Book;
import exergue.edition.Listing;
import exergue.edition.Part;
import exergue.files.MemoryTree;
import exergue.model.HouseStyle.Rows;
import exergue.model.Inline;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Concordances and indexes on the page: nothing lost, in order, in columns of a height, and every link leads somewhere. */
class ListingsTest {

    private static final int LINES = 400;

    private static byte[] pdf;

    @BeforeAll
    static void set() throws Exception {
        Book sample = SampleBook.of(6, 40);
        List<Part> back = new ArrayList<>(sample.back());
        back.add(new Part.Listings("concordances", SampleBook.words("Concordances"), SampleBook.words("Numbers of this book."), "(continued)",
                List.of(listing("concordance.work.h", true, LINES), listing("concordance.work.v", true, 3),
                        listing("concordance.work.z", true, 60))));
        back.add(new Part.Listings("indexes", SampleBook.words("Indexes"), SampleBook.words("Numbers of this book."), "(continued)",
                List.of(listing("index.mints", false, 2), listing("index.types", false, LINES))));
        Book book = new Book("en", sample.title(), sample.front(), sample.body(), back);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertEquals(List.of(), Typesetter.typeset(book, SampleBook.setting(), out).findings().all());
        pdf = out.toByteArray();
    }

    private static Listing listing(String id, boolean pairs, int lines) {
        List<Listing.Line> all = new ArrayList<>();
        for (int i = 0; i < lines; i++) {
            List<Inline> numbers = new ArrayList<>();
            for (int run = 0; run <= i % 5; run++) {
                int coin = 1 + (i + run * 3) % 40;
                numbers.add(new Inline.Link("#lk-" + coin, SampleBook.words(coin + (run < i % 5 ? "," : ""))));
                numbers.add(new Inline.Words(" "));
            }
            all.add(new Listing.Line(!pairs && i % 9 == 8, SampleBook.words(name(id, i)), numbers));
        }
        return new Listing(id, SampleBook.words("List " + id), pairs ? Optional.of(new Listing.Heads("No.", "Book")) : Optional.empty(), all);
    }

    private static String name(String id, int line) {
        return id.charAt(id.length() - 1) + "§" + line;
    }

    @Test
    void everyLineIsPrintedOnceAndInOrder() throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> read = new PDFTextStripper().getText(document).lines().flatMap(line -> java.util.Arrays.stream(line.split("[\\s\\p{Z}]+")))
                    .filter(word -> word.matches("[a-z]§[0-9]+")).toList();
            List<String> expected = new ArrayList<>();
            List.of("h:400", "v:3", "z:60", "s:2", "s:400").forEach(list -> {
                for (int i = 0; i < Integer.parseInt(list.substring(2)); i++) {
                    expected.add(list.charAt(0) + "§" + i);
                }
            });
            assertEquals(expected, read);
        }
    }

    /** The page of each name, and how far from the left it begins. */
    private static Map<Integer, TreeSet<Integer>> columns(String letter) throws Exception {
        Map<Integer, TreeSet<Integer>> columns = new java.util.TreeMap<>();
        int page = 0;
        for (String line : PlacedLines.of(pdf).lines().toList()) {
            if (line.startsWith("page ")) {
                page = Integer.parseInt(line.substring(5));
            } else if (line.contains("  Regular  " + letter + "§") || line.contains(" Regular  " + letter + "§")) {
                columns.computeIfAbsent(page, p -> new TreeSet<>()).add((int) Double.parseDouble(line.strip().split(" +")[0]));
            }
        }
        return columns;
    }

    @Test
    void aLongListTakesEveryColumnOfEveryPage() throws Exception {
        Map<Integer, TreeSet<Integer>> columns = columns("h");
        assertTrue(columns.size() > 1, columns.toString());
        columns.values().forEach(lefts -> assertEquals(4, lefts.size(), columns.toString()));
        columns("s").values().forEach(lefts -> assertTrue(lefts.size() >= 2 && lefts.size() <= 3, lefts.toString()));
    }

    /** So that no page of a list has to be taken for one of another. */
    @Test
    void everyPageThatAListRunsOnToSaysWhichListItIs() throws Exception {
        List<String> pages = List.of(PlacedLines.of(pdf).split("(?m)^page "));
        for (Map.Entry<String, String> list : Map.of("h", "List concordance.work.h", "s", "List index.types").entrySet()) {
            int first = columns(list.getKey()).keySet().iterator().next();
            for (int page : columns(list.getKey()).keySet()) {
                assertTrue(pages.get(page).contains(list.getValue() + (page == first ? "" : " (continued)")), page + " of " + list.getValue());
            }
        }
    }

    @Test
    void everyInternalLinkLeadsToAPageOfTheBook() throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            int links = 0;
            for (PDPage page : document.getPages()) {
                for (PDAnnotation annotation : page.getAnnotations()) {
                    if (annotation instanceof PDAnnotationLink link) {
                        PDDestination target = link.getAction() instanceof PDActionGoTo go ? go.getDestination() : link.getDestination();
                        assertTrue(target instanceof PDPageDestination to && to.retrievePageNumber() >= 0, String.valueOf(target));
                        links++;
                    }
                }
            }
            assertTrue(links > 2 * LINES, links + " links");
        }
    }

    @Test
    void theyPassBothStandards() throws Exception {
        assertEquals(List.of(), VeraPdf.failures(pdf, PDFAFlavour.PDFA_3_U));
        assertEquals(List.of(), VeraPdf.failures(pdf, PDFAFlavour.PDFUA_1));
    }

    @Test
    void pageNumbersThatNeverSettleAreAFinding() throws Exception {
        List<Part> parts = Collections.synchronizedList(new ArrayList<>());
        try (SetBook set = PagePasses.set(book(parts), pages -> {
            parts.add(new Part.Text("more-" + parts.size(), SampleBook.words("More"), SampleBook.prose(1)));
            return book(parts);
        }, SampleBook.setting(MemoryTree.ofText(Map.of()), Rows.ALIGNED))) {
            assertEquals(List.of("pages-unsettled"), set.findings().all().stream().map(finding -> finding.code().id()).toList());
        }
        try (SetBook set = PagePasses.set(book(List.of()), pages -> book(List.of()),
                SampleBook.setting(MemoryTree.ofText(Map.of()), Rows.ALIGNED))) {
            assertEquals(List.of(), set.findings().all());
        }
    }

    private static Book book(List<Part> more) {
        List<Part> body = new ArrayList<>(more);
        body.add(new Part.Text("last", SampleBook.words("Last"), SampleBook.prose(1)));
        return new Book("en", SampleBook.title(), List.of(), body, List.of());
    }
}
