package exergue.typeset;

import exergue.edition.Book;
import exergue.edition.PageMap;
import exergue.finding.Findings;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * A book whose pages are set and not yet written. What goes into the file besides its pages, such as data that name
 * them, can only be made now. Close it when done.
 */
public final class SetBook implements AutoCloseable {

    /** The pages, what is on them that a printer looks at, and where everything stands. */
    record Laid(SetPages pages, List<PlacedPicture> pictures, List<Area> areas) { }

    private final PDDocument document;
    private final Book book;
    private final Setting setting;
    private final Optional<SetPages> pages;
    private final Findings findings;
    private final List<PlacedPicture> pictures;
    private final List<Area> areas;

    /** @param laid empty if there is an error among the findings */
    SetBook(PDDocument document, Book book, Setting setting, Optional<Laid> laid, Findings findings) {
        this.document = document;
        this.book = book;
        this.setting = setting;
        this.pages = laid.map(Laid::pages);
        this.pictures = laid.map(Laid::pictures).orElse(List.of());
        this.areas = laid.map(Laid::areas).orElse(List.of());
        this.findings = findings;
    }

    public Book book() {
        return book;
    }

    /** Where everything stands; {@link PageMap#UNKNOWN} if no pages were made. */
    public PageMap pages() {
        return pages.map(SetPages::map).orElse(PageMap.UNKNOWN);
    }

    /** What stands where; of an excerpt, on its own pages. */
    public Sheets sheets() {
        return pages.map(set -> new Sheets(IntStream.range(0, set.count()).mapToObj(set::folio).toList(), set.front(), areas))
                .orElse(Sheets.NONE);
    }

    /** With an error among them there is nothing to write. */
    public Findings findings() {
        return findings;
    }

    SetBook with(Findings more) {
        return new SetBook(document, book, setting, pages.map(set -> new Laid(set, pictures, areas)), findings.and(more));
    }

    /**
     * Writes the book; nothing if no pages were made. The same book, stamp, origin and attachments give the same bytes.
     *
     * @param origin what the source was at: "Git commit 1a2b…"; empty if that is not known
     * @param pdf    left open
     * @throws IOException if the stream or the disk fails
     */
    public void write(Optional<String> origin, List<Attachment> attachments, OutputStream pdf) throws IOException {
        if (pages.isEmpty()) {
            return;
        }
        setting.progress().reached("writing the PDF", 0, pages.get().count());
        Passport.write(document, book, pages.get(), setting.stamp().get(), origin);
        Attachments.embed(document, attachments);
        document.save(pdf);
    }

    /** Writes the pages as they are, for a screen. @param pdf left open @throws IOException if the stream or the disk fails */
    public void writeForLooking(OutputStream pdf) throws IOException {
        document.save(pdf);
    }

    /**
     * Writes the book for the press: the same pages with bleed, marks and pure black, without links, tags and data.
     * After this nothing else can be written.
     *
     * @param pdf left open
     * @return what a printer would ask about
     * @throws IOException if the stream or the disk fails
     */
    public Findings writeForPress(OutputStream pdf) throws IOException {
        if (pages.isEmpty()) {
            return Findings.none();
        }
        setting.progress().reached("writing the PDF for the press", 0, pages.get().count());
        PressSheet.prepare(document);
        Passport.writeForPress(document, book, pages.get(), setting.stamp().get());
        document.save(pdf);
        return PressCheck.look(book, setting.written(), pages.get(), pictures);
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
