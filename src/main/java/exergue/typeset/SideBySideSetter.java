package exergue.typeset;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import exergue.edition.Book;
import exergue.files.MemoryTree;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Place;
import exergue.model.TemplateChoice;
import exergue.model.TitleMatter;
import exergue.model.Written;
import exergue.typeset.SideBySide.Mark;
import exergue.typeset.SideBySide.Row;
import exergue.typeset.SideBySide.Run;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;

/** A proof of changes becomes pages: a tagged PDF/A-3u of the program's own templates. The same proof gives the same bytes. */
public final class SideBySideSetter {

    private static final String PAGE = "collation.ftlh";
    private static final String ENGLISH = "en";
    private static final String CARET = "‸";
    private static final String DELETE = "₰";

    private final List<Finding> findings = new ArrayList<>();
    private final MemoryTree nothing = new MemoryTree(Map.of());
    private final TemplateFiles files = new TemplateFiles(nothing, TemplateChoice.USUAL);

    private SideBySideSetter() { }

    /**
     * @param pdf gets the whole file; left open
     * @return what the page engine had to say, mostly nothing
     * @throws IOException if the stream fails
     */
    public static Findings write(SideBySide proof, OutputStream pdf) throws IOException {
        SideBySideSetter setter = new SideBySideSetter();
        setter.set(proof, pdf);
        return Findings.of(setter.findings);
    }

    private void set(SideBySide proof, OutputStream pdf) throws IOException {
        Optional<String> page = new Templates(files, findings::add).fill(PAGE, values(proof));
        Optional<Document> xhtml = page.isEmpty() ? Optional.empty() : Xhtml.read(page.get(), files.shown(PAGE), findings::add);
        if (xhtml.isEmpty()) {
            return;
        }
        try (PDDocument document = new PDDocument()) {
            Press press = new Press(document, new TreeResources(nothing, files), new Remarks(files, findings::add));
            SetPages pages;
            try (PdfBoxRenderer renderer = press.forBook(xhtml.get())) {
                renderer.layout();
                pages = SetPages.read(renderer, new Marks(), 0, Blanks.beforeBody(false));
                renderer.createPDFWithoutClosing();
            }
            Passport.write(document, bare(proof.title()), pages, Stamp.of(MemoryTree.ofText(Map.of(PAGE, page.get())), ENGLISH),
                    Optional.empty());
            document.save(pdf);
        }
    }

    /** A book of nothing but its title, which is all that the file says of itself. */
    private static Book bare(String title) {
        Place place = Place.ofFile(PAGE);
        TitleMatter matter = new TitleMatter(new Written<>(title, place), Optional.empty(), List.of(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), List.of(), new Written<>(ENGLISH, place));
        return new Book(ENGLISH, matter, List.of(), List.of(), List.of());
    }

    private static Map<String, Object> values(SideBySide proof) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("title", proof.title());
        values.put("before", proof.before());
        values.put("after", proof.after());
        values.put("summary", proof.summary());
        values.put("consequences", proof.consequences());
        values.put("sections", proof.sections().stream().map(section -> Map.of("heading", section.heading(),
                "entries", section.entries().stream().map(entry -> Map.of("heading", entry.heading(), "remarks", entry.remarks(),
                        "rows", entry.rows().stream().map(SideBySideSetter::row).toList())).toList())).toList());
        return values;
    }

    private static Map<String, Object> row(Row row) {
        boolean deleted = row.after().isEmpty() || row.before().stream().anyMatch(run -> run.mark() == Mark.DELETED);
        boolean inserted = row.before().isEmpty() || row.after().stream().anyMatch(run -> run.mark() == Mark.INSERTED);
        return Map.of("label", row.label(), "before", runs(row.before()), "after", runs(row.after()),
                "sign", (deleted ? DELETE : "") + (inserted ? CARET : ""));
    }

    private static List<Map<String, Object>> runs(List<Run> runs) {
        return runs.stream().map(run -> switch (run.mark()) {
            case KEPT -> Map.<String, Object>of("mark", "", "text", run.text());
            case DELETED -> Map.<String, Object>of("mark", "deleted", "text", run.text());
            case INSERTED -> Map.<String, Object>of("mark", "inserted", "text", CARET + run.text());
        }).toList();
    }
}
