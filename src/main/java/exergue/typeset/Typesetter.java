package exergue.typeset;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import exergue.edition.Book;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Place;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import org.apache.pdfbox.io.MemoryUsageSetting;
import org.apache.pdfbox.io.RandomAccessStreamCache;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;

/** The book as data becomes pages: a tagged PDF/A-3u with embedded faces. */
public final class Typesetter {

    private static final String BOOK = "book.ftlh";
    private static final String HEADS = "heads.ftlh";

    /** Photographs of a large book would not fit into memory; what is beyond this goes to a temporary file. */
    private static final RandomAccessStreamCache.StreamCacheCreateFunction STREAMS =
            MemoryUsageSetting.setupMixed(64L << 20).streamCache;

    private final PDDocument document;
    private final Book book;
    private final Setting setting;
    private final List<Finding> findings = new ArrayList<>();
    private final TemplateFiles files;
    private final Templates templates;
    private final Remarks remarks;
    private List<PlacedPicture> pictures = List.of();
    private List<Area> areas = List.of();

    private Typesetter(Book book, Setting setting, PDDocument document) {
        this.document = document;
        this.book = book;
        this.setting = setting;
        this.files = new TemplateFiles(setting.source(), setting.templates());
        this.templates = new Templates(files, findings::add);
        this.remarks = new Remarks(files, findings::add);
    }

    /**
     * Sets the book; the caller writes it, or not, and closes it.
     *
     * @throws IOException if the disk fails
     */
    public static SetBook set(Book book, Setting setting) throws IOException {
        PDDocument document = new PDDocument(STREAMS);
        Typesetter typesetter = new Typesetter(book, setting, document);
        Optional<SetBook.Laid> laid = typesetter.orClose(typesetter::runOrBlameTemplates);
        return new SetBook(document, book, setting, laid, Findings.of(typesetter.findings));
    }

    /**
     * Sets a stretch of the book, for looking at. What the engine remarks of it is not told: links lead out of it, and the
     * whole book will have the same to say.
     *
     * @param book with the part that the stretch is in
     * @return with its blank pages and one for each that it takes; empty if it cannot be set
     * @throws IOException if the disk fails
     */
    public static Optional<SetBook> excerpt(Book book, Setting setting, Excerpt excerpt) throws IOException {
        PDDocument document = new PDDocument(STREAMS);
        Typesetter typesetter = new Typesetter(excerpt.alone(book), setting, document);
        Optional<SetBook.Laid> laid = typesetter.orClose(() -> typesetter.runExcerpt(excerpt));
        if (laid.isEmpty()) {
            document.close();
        }
        return laid.map(set -> new SetBook(document, book, setting, laid, Findings.none()));
    }

    /**
     * Sets the book and writes it with nothing besides.
     *
     * @param pdf gets the whole file, or nothing if there is an error among the findings; left open
     * @throws IOException if the stream or the disk fails
     */
    public static TypesetBook typeset(Book book, Setting setting, OutputStream pdf) throws IOException {
        try (SetBook set = set(book, setting)) {
            set.write(Optional.empty(), List.of(), pdf);
            return new TypesetBook(set.pages(), set.findings());
        }
    }

    private interface Run {
        Optional<SetBook.Laid> run() throws IOException;
    }

    /** A large document has a file of its own, which has to go where nobody gets the document. */
    private Optional<SetBook.Laid> orClose(Run setting) throws IOException {
        boolean done = false;
        try {
            Optional<SetBook.Laid> laid = setting.run();
            done = true;
            return laid;
        } finally {
            if (!done) {
                document.close();
            }
        }
    }

    /**
     * The page engine is not proof against every markup. With the program's own templates its failure is a bug of
     * ours; with an author's templates it is most likely theirs, and they need to hear of it.
     */
    private Optional<SetBook.Laid> runOrBlameTemplates() throws IOException {
        try {
            return run();
        } catch (RuntimeException e) {
            if (e instanceof CancellationException || !files.anyOwn()) {
                throw e;
            }
            findings.add(Finding.of(TypesetCodes.TEMPLATE_MARKUP, Place.ofFile(files.shown(BOOK)), "",
                    "The page engine gave up on what the catalogue's own templates make: " + e,
                    "Go back to the program's templates file by file until the book can be set, and compare the last "
                            + "file with the program's."));
            return Optional.empty();
        }
    }

    private Optional<SetBook.Laid> run() throws IOException {
        BookValues values = new BookValues(book, setting, new FootOfPage(), findings::add);
        Map<String, Object> all = values.all();
        Optional<Integer> front = shareColumns(all) ? frontPages(all) : Optional.empty();
        if (front.isEmpty() || failed()) {
            return Optional.empty();
        }
        Blanks blanks = Blanks.beforeBody(front.get() % 2 == 1);
        all.put("blankBeforeBody", blanks.beforeBody());
        int frontPages = front.get() + (blanks.beforeBody() ? 1 : 0);
        if (!book.onRight().isEmpty()) {
            blanks = withRightPages(blanks, all, values, frontPages);
        }
        setting.progress().reached("filling the page templates", 0, 0);
        Optional<Document> xhtml = page(BOOK, all);
        if (xhtml.isEmpty()) {
            return Optional.empty();
        }
        Press press = new Press(document, new TreeResources(setting.source(), files), remarks);
        SetPages pages = setBook(press, xhtml.get(), values, frontPages, blanks);
        setting.progress().reached("setting running heads", 0, pages.count());
        printHeads(press, new Heads(pages, values.kinds(), book.title().title().value()));
        return failed() ? Optional.empty() : Optional.of(new SetBook.Laid(pages, pictures, areas));
    }

    private Optional<SetBook.Laid> runExcerpt(Excerpt excerpt) throws IOException {
        BookValues values = new BookValues(book, setting, new FootOfPage(), findings::add);
        Optional<Document> xhtml = page(BOOK, ExcerptValues.of(values.all(), excerpt));
        if (xhtml.isEmpty() || failed()) {
            return Optional.empty();
        }
        Press press = new Press(document, new TreeResources(setting.source(), files), new Remarks(files, unheard -> { }));
        SetPages pages;
        List<Area> areas;
        try (PdfBoxRenderer renderer = press.forLooking(xhtml.get())) {
            renderer.layout();
            pages = SetPages.read(renderer, values.marks(), excerpt);
            areas = AreaFinder.find(renderer, values.marks());
            renderer.createPDFWithoutClosing();
        }
        printHeads(press, new Heads(pages, values.kinds(), book.title().title().value()));
        return failed() ? Optional.empty() : Optional.of(new SetBook.Laid(pages, List.of(), areas));
    }

    private boolean failed() {
        return Findings.of(findings).hasErrors();
    }

    /** How many pages the front matter takes, so that the body can open on a right page; found by setting it alone. */
    private Optional<Integer> frontPages(Map<String, Object> all) throws IOException {
        if (book.front().isEmpty()) {
            return Optional.of(0);
        }
        Map<String, Object> frontOnly = new LinkedHashMap<>(all);
        frontOnly.put("body", List.of());
        frontOnly.put("blankBeforeBody", false);
        frontOnly.put("trial", true);
        return trial(frontOnly, laidOut -> laidOut.getRootBox().getLayer().getPages().size());
    }

    /** Concordances and indexes are set alone first, one column wide, to see how high each line is. */
    private boolean shareColumns(Map<String, Object> all) throws IOException {
        List<Map<String, Object>> parts = new ArrayList<>();
        for (String half : List.of("front", "body")) {
            for (Object part : (List<?>) all.get(half)) {
                @SuppressWarnings("unchecked")
                Map<String, Object> values = (Map<String, Object>) part;
                if (values.containsKey("listings")) {
                    parts.add(values);
                }
            }
        }
        if (parts.isEmpty()) {
            return true;
        }
        Map<String, Object> galley = new LinkedHashMap<>(all);
        galley.put("front", List.of());
        galley.put("body", parts);
        galley.put("blankBeforeBody", false);
        galley.put("trial", true);
        return trial(galley, laidOut -> {
            Galley.share(laidOut, parts);
            return parts;
        }).isPresent();
    }

    private <T> Optional<T> trial(Map<String, Object> values, Function<PdfBoxRenderer, T> look) throws IOException {
        Optional<Document> xhtml = page(BOOK, values);
        if (xhtml.isEmpty()) {
            return Optional.empty();
        }
        try (PDDocument trial = new PDDocument()) {
            Press press = new Press(trial, new TreeResources(setting.source(), files), remarks);
            try (PdfBoxRenderer renderer = press.over(xhtml.get(), null)) {
                renderer.layout();
                return Optional.of(look.apply(renderer));
            }
        }
    }

    /** Which parts would open on a left-hand page is seen by setting the book without further blank pages. */
    private Blanks withRightPages(Blanks blanks, Map<String, Object> all, BookValues values, int front) throws IOException {
        Map<String, Object> trial = new LinkedHashMap<>(all);
        trial.put("trial", true);
        Blanks more = trial(trial, laidOut -> blanks.and(SetPages.read(laidOut, values.marks(), front, blanks), book.onRight()))
                .orElse(blanks);
        for (Object part : (List<?>) all.get("body")) {
            @SuppressWarnings("unchecked")
            Map<String, Object> its = (Map<String, Object>) part;
            its.put("blankBefore", more.beforeParts().contains(its.get("anchor").toString()));
        }
        return more;
    }

    private SetPages setBook(Press press, Document xhtml, BookValues values, int front, Blanks blanks)
            throws IOException {
        setting.progress().reached("laying out pages", 0, 0);
        try (PdfBoxRenderer renderer = press.forBook(xhtml)) {
            renderer.layout();
            SetPages pages = SetPages.read(renderer, values.marks(), front, blanks);
            new TooWide(renderer, setting.written(), Place.ofFile(files.shown("page.css")), findings::add)
                    .look(renderer.getRootBox(), "");
            setting.known().accept(pages.map());
            setting.progress().reached("printing pages", 0, pages.count());
            pictures = PictureFinder.find(renderer);
            areas = setting.placed() ? AreaFinder.find(renderer, values.marks()) : List.of();
            renderer.createPDFWithoutClosing();
            return pages;
        }
    }

    private void printHeads(Press press, Heads heads) throws IOException {
        Optional<Document> sheets = page(HEADS, heads.values());
        if (sheets.isPresent() && !new Overprint(document).print(sheets.get(), press)) {
            findings.add(Finding.of(TypesetCodes.TEMPLATE_FAULT, Place.ofFile(files.shown(HEADS)), "",
                    "The running heads did not come out as one sheet for each page of the book.",
                    "Let the template make exactly one element a page, and nothing that needs more room."));
        }
    }

    private Optional<Document> page(String template, Map<String, Object> values) throws IOException {
        Optional<String> page = templates.fill(template, values);
        return page.isEmpty() ? Optional.empty() : Xhtml.read(page.get(), files.shown(template), findings::add);
    }
}
