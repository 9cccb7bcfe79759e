package exergue.typeset;

import exergue.edition.Book;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.model.BookWord;
import exergue.model.Language;
import exergue.typeset.WebPages.WebPage;
import exergue.typeset.web.Addresses;
import exergue.typeset.web.HtmlText;
import exergue.typeset.web.Sink;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.w3c.dom.Document;

/** The book as a folder of pages for a browser: no server, no scripts, every link relative. */
public final class WebBook {

    private static final String PAGE = "web/page.ftlh";
    private static final String STYLE = "web/style.css";
    private static final String FACES = "exergue/fonts/";
    private static final List<String> FACE_FILES = List.of("GentiumBookPlus-Regular.ttf", "GentiumBookPlus-Italic.ttf",
            "GentiumBookPlus-Bold.ttf", "OFL.txt");

    private final Book book;
    private final Setting setting;
    private final Map<String, String> linkedData;
    private final List<Finding> findings = new ArrayList<>();
    private final TemplateFiles files;
    private final Templates templates;
    private final Addresses addresses = new Addresses();
    private final TreeSet<String> pictures = new TreeSet<>();

    private WebBook(Book book, Setting setting, Map<String, String> linkedData) {
        this.book = book;
        this.setting = setting;
        this.linkedData = linkedData;
        this.files = new TemplateFiles(setting.source(), setting.templates());
        this.templates = new Templates(files, findings::add);
    }

    /**
     * Writes every file of the folder, or stops with an error among the findings.
     *
     * @param linkedData JSON-LD of each coin by its anchor, for its page; without {@code <} in it
     * @param data       files to lie beside the pages and be named on the first
     * @throws IOException if a file cannot be read or the sink fails
     */
    public static Findings write(Book book, Setting setting, Map<String, String> linkedData, List<Attachment> data,
                                 Sink sink) throws IOException {
        WebBook web = new WebBook(book, setting, linkedData);
        web.pages(data, sink);
        if (!Findings.of(web.findings).hasErrors()) {
            web.besides(data, sink);
        }
        return Findings.of(web.findings);
    }

    private void pages(List<Attachment> data, Sink sink) throws IOException {
        Map<String, Object> all = new BookValues(book, setting, new EndOfPart(), finding -> { }).all();
        Language language = Language.of(book.language()).orElse(Language.ENGLISH);
        all.put("number", BookWord.NUMBER.in(language));
        all.put("contentsHeading", BookWord.CONTENTS.in(language));
        all.put("data", data.stream().map(Attachment::name).toList());
        List<WebPage> pages = WebPages.of(all);
        pages.forEach(page -> {
            if (!page.anchor().isEmpty()) {
                addresses.addPage(page.anchor(), page.file());
            }
        });
        pages.stream().filter(page -> !page.values().get("kind").equals("coin"))
                .forEach(page -> register(page.values(), page.file()));
        for (WebPage page : pages) {
            Optional<String> html = page(page, all);
            if (html.isEmpty()) {
                return;
            }
            sink.write(page.file(), html.get().getBytes(StandardCharsets.UTF_8));
        }
    }

    /** Every anchor in what a page shows becomes known as an element of that page. */
    private void register(Object value, String file) {
        if (value instanceof Map<?, ?> map) {
            if (map.get("anchor") instanceof String anchor) {
                addresses.addElement(anchor, file);
            }
            map.forEach((key, nested) -> {
                if (!key.equals("mints")) {
                    register(nested, file);
                }
            });
        } else if (value instanceof List<?> list) {
            list.forEach(nested -> register(nested, file));
        }
    }

    private Optional<String> page(WebPage page, Map<String, Object> all) throws IOException {
        Map<String, Object> values = new LinkedHashMap<>(all);
        values.put("page", page.values());
        values.put("linkedData", linkedData.getOrDefault(page.anchor(), ""));
        Optional<String> filled = templates.fill(PAGE, values);
        Optional<Document> xhtml = filled.isEmpty() ? Optional.empty()
                : Xhtml.read(filled.get(), files.shown(PAGE), findings::add);
        return xhtml.map(document -> {
            new WebLinks(addresses, page.file(), pictures).resolve(document.getDocumentElement());
            return HtmlText.of(document);
        });
    }

    private void besides(List<Attachment> data, Sink sink) throws IOException {
        sink.write("style.css", files.bytes(STYLE).orElseThrow(() -> new IllegalStateException("no " + STYLE)));
        for (String face : FACE_FILES) {
            try (InputStream in = WebBook.class.getClassLoader().getResourceAsStream(FACES + face)) {
                sink.write("fonts/" + face, in.readAllBytes());
            }
        }
        for (String picture : pictures) {
            sink.write(WebLinks.PICTURES + picture, setting.source().read(picture));
        }
        for (Attachment file : data) {
            sink.write(file.name(), file.bytes());
        }
    }
}
