package exergue;

import exergue.cite.SetWorks;
import exergue.cite.WorksSetter;
import exergue.edition.Anchors;
import exergue.edition.Book;
import exergue.edition.DataRow;
import exergue.edition.DataRows;
import exergue.edition.Editor;
import exergue.edition.PageMap;
import exergue.files.Cache;
import exergue.files.Tree;
import exergue.finding.Findings;
import exergue.model.Catalogue;
import exergue.photo.Gauged;
import exergue.photo.GaugedFiles;
import exergue.photo.PictureCheck;
import exergue.photo.Workroom;
import exergue.photo.print.Darkroom;
import exergue.photo.print.PreparedPictures;
import exergue.photo.print.PrintedCoins;
import exergue.source.KeptEntries;
import exergue.source.Loaded;
import exergue.source.SourceReader;
import exergue.typeset.Attachment;
import exergue.typeset.Excerpt;
import exergue.typeset.HeadStart;
import exergue.typeset.PagePasses;
import exergue.typeset.SetBook;
import exergue.typeset.Setting;
import exergue.typeset.Sheets;
import exergue.typeset.Stamp;
import exergue.typeset.Typesetter;
import exergue.typeset.WebBook;
import exergue.typeset.web.Sink;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Function;
import java.util.function.Supplier;

/** The pipeline: one call for each stage, from the source tree to the book and its data. */
public final class Exergue {

    /** Of this program. */
    public static final String VERSION = "0.1.0";

    private Exergue() { }

    /**
     * @param catalogue empty where so much is wrong that there is none; with errors among the findings it has gaps
     * @param book      made of that catalogue, without page numbers in its text
     * @param works     as their citation style sets them
     * @param pictures  ready for the page; empty until somebody asks for them
     */
    public record Checked(Tree source, Optional<Catalogue> catalogue, Optional<Book> book, SetWorks works,
                          Findings findings, Optional<PreparedPictures> pictures) {

        /** Nothing has gone so wrong that there could be no book. */
        public boolean isSound() {
            return !findings.hasErrors() && catalogue.isPresent() && book.isPresent();
        }

        /** The source, and the pictures that were made out of it. */
        private Tree printed() {
            return pictures.map(PreparedPictures::tree).orElse(source);
        }
    }

    /** @param publication empty if there are errors among the findings */
    public record Made(Optional<Publication> publication, Findings findings) { }

    /**
     * @param book   as it was set
     * @param sheets its pages
     * @param rows   one for each coin, in the order of the book
     * @param data   files that the book carries inside it
     * @param tree   where the pictures are that the book shows
     */
    public record Publication(Book book, Sheets sheets, List<DataRow> rows, List<Attachment> data, Tree tree) {
        public Publication {
            rows = List.copyOf(rows);
            data = List.copyOf(data);
        }

        public int pages() {
            return sheets.count();
        }
    }

    /**
     * Gets ready beside other work what is needed to read any source and to set any book. {@link #check} does so itself; who
     * calls it sooner gains the time between. Returns at once.
     */
    public static void headStart() {
        ForkJoinPool.commonPool().submit(SourceReader::getReady);
        HeadStart.faces();
    }

    /**
     * Reads the source, arranges the book, and says everything that is wrong with them. The checks look at the
     * catalogue and at nothing else, and so run while the book is arranged.
     */
    public static Checked check(Tree source, Progress progress) throws IOException {
        return check(source, KeptEntries.nothing(), progress);
    }

    /** The same of a source that is checked again and again. @param kept of the entries as they were read the last time */
    public static Checked check(Tree source, KeptEntries kept, Progress progress) throws IOException {
        headStart();
        progress.starts(Stage.READ);
        Loaded loaded = SourceReader.read(source, kept);

        progress.starts(Stage.CHECK);
        Optional<ChecksBeside> checks = loaded.catalogue().map(ChecksBeside::begin);

        progress.starts(Stage.ARRANGE);
        SetWorks works = loaded.catalogue().isPresent() ? WorksSetter.set(loaded.catalogue().get(), source)
                : new SetWorks(Map.of(), Findings.none());
        Optional<Editor.Edited> edited = loaded.catalogue().map(catalogue -> Editor.edit(catalogue, works.full(), PageMap.UNKNOWN));
        Findings arranged = edited.map(Editor.Edited::findings).orElse(Findings.none());
        Unread unread = Unread.of(loaded);
        Findings later = checks.map(ChecksBeside::all).orElse(Findings.none()).and(works.findings()).and(arranged);
        Findings judged = Judgement.of(OneCause.of(unread.ofReading(loaded.findings()).and(unread.ofStages(later))),
                loaded.catalogue());
        Findings house = loaded.catalogue().map(catalogue -> HouseCheck.of(catalogue, judged)).map(unread::ofStages)
                .orElse(Findings.none());
        return new Checked(source, loaded.catalogue(), edited.map(Editor.Edited::book), works,
                Judgement.of(judged.and(house), loaded.catalogue()), Optional.empty());
    }

    /**
     * Holds the entries of a source that has been read against their photographs. Every picture is read and measured, so this
     * is done only where it is asked for.
     *
     * @param cache what was measured before, and what is now
     * @param room  for all pictures that are open at one time
     */
    public static Findings gauge(Checked checked, Cache cache, Workroom room, Progress progress) throws IOException {
        if (checked.catalogue().isEmpty()) {
            return Findings.none();
        }
        progress.starts(Stage.GAUGE);
        Map<String, Gauged> gauged = new GaugedFiles(checked.source(), cache, room).all(PictureCheck.files(checked.catalogue().get()),
                (done, of) -> progress.reached("pictures", done, of));
        return Judgement.of(PictureCheck.check(checked.catalogue().get(), path -> Optional.ofNullable(gauged.get(path))),
                checked.catalogue());
    }

    /**
     * Makes the photographs ready for the page, and arranges the book anew with the sizes they turn out to have. A source
     * with errors stays as it is.
     */
    public static Checked pictures(Checked checked, Darkroom darkroom, Progress progress) throws IOException {
        if (!checked.isSound()) {
            return checked;
        }
        Catalogue catalogue = checked.catalogue().orElseThrow();
        PrintedCoins unopened = PrintedCoins.unopened(catalogue);
        if (unopened.byCoin().isEmpty() && catalogue.chapters().values().stream().allMatch(chapter -> chapter.pictures().findAny().isEmpty())) {
            return new Checked(checked.source(), checked.catalogue(), checked.book(), checked.works(), checked.findings(),
                    Optional.of(new PreparedPictures(unopened, checked.source(), Findings.none())));
        }
        progress.starts(Stage.PICTURES);
        PreparedPictures ready = darkroom.prepare(catalogue, checked.source(),
                (done, of) -> progress.reached("coins", done, of));
        Editor.Edited edited = Editor.edit(catalogue, checked.works().full(), ready.pictures(), PageMap.UNKNOWN);
        return new Checked(checked.source(), checked.catalogue(), Optional.of(edited.book()), checked.works(),
                Judgement.of(OneCause.of(checked.findings().and(ready.findings()).and(edited.findings())), checked.catalogue()),
                Optional.of(ready));
    }

    /** Findings that were made beside the road, as the house and the entries of a catalogue weigh them. */
    public static Findings judged(Findings raised, Catalogue catalogue) {
        return Judgement.of(raised, Optional.of(catalogue));
    }

    /** Makes the book alone, without data inside it. */
    public static Made typeset(Checked checked, OutputStream pdf, Progress progress) throws IOException {
        return typeset(checked, Enclosed.NOTHING, Prints.only(pdf), progress);
    }

    /**
     * Makes the book of a source that has been checked; stops where there are errors. Photographs that are not ready for
     * the page are made so in memory.
     *
     * @param enclosed what the file carries besides its pages
     * @param prints   what the book is written to; nothing is if there are errors
     */
    public static Made typeset(Checked checked, Enclosed enclosed, Prints prints, Progress progress)
            throws IOException {
        if (checked.isSound() && checked.pictures().isEmpty()) {
            return typeset(pictures(checked, Darkroom.inMemory(), progress), enclosed, prints, progress);
        }
        if (!checked.isSound()) {
            return new Made(Optional.empty(), checked.findings());
        }
        Catalogue catalogue = checked.catalogue().get();
        Book book = checked.book().get();

        progress.starts(Stage.TYPESET);
        HeadStart.writing();
        ForkJoinTask<Stamp> stamp = ForkJoinPool.commonPool().submit(() -> stamp(checked.source()));
        DataBeside beside = new DataBeside(pages -> DataRows.of(catalogue, book, pages), enclosed.data());
        Setting setting = Setting.of(catalogue, checked.printed(), stamp::join, progress::reached).telling(beside::know)
                .placing(prints.placed());
        try (SetBook set = set(checked, catalogue, setting)) {
            Findings findings = Judgement.of(checked.findings().and(set.findings()), checked.catalogue());
            if (findings.hasErrors()) {
                return new Made(Optional.empty(), findings);
            }

            progress.starts(Stage.WRITE);
            DataBeside.Data data = beside.of(set.pages());
            set.write(enclosed.origin(), data.files(), prints.book());
            Findings asked = prints.press().isPresent() ? set.writeForPress(prints.press().get()) : Findings.none();
            return new Made(Optional.of(new Publication(set.book(), set.sheets(), data.rows(), data.files(), checked.printed())),
                    Judgement.of(findings.and(asked), checked.catalogue()));
        }
    }

    /**
     * Sets a stretch of a book whose photographs are ready for the page, to be looked at before the whole book is set.
     *
     * @param pdf gets its pages; left open
     * @return what stands on them; empty if they cannot be set
     */
    public static Optional<Sheets> excerpt(Checked checked, Excerpt excerpt, OutputStream pdf) throws IOException {
        Catalogue catalogue = checked.catalogue().orElseThrow();
        Setting setting = Setting.of(catalogue, checked.printed(), () -> stamp(checked.source()), (step, done, of) -> { });
        Optional<SetBook> set = Typesetter.excerpt(checked.book().orElseThrow(), setting, excerpt);
        if (set.isEmpty()) {
            return Optional.empty();
        }
        try (SetBook pages = set.get()) {
            pages.writeForLooking(pdf);
            return Optional.of(pages.sheets());
        }
    }

    /** Every file is read once more for it, but for those whose digest the tree remembers. */
    private static Stamp stamp(Tree source) {
        try {
            return Stamp.of(source, "exergue " + VERSION);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static SetBook set(Checked checked, Catalogue catalogue, Setting setting) throws IOException {
        Book book = checked.book().orElseThrow();
        return catalogue.style().indexes().wantsPages()
                ? PagePasses.set(book, pages -> Editor.edit(catalogue, checked.works().full(),
                        checked.pictures().orElseThrow().pictures(), pages).book(), setting)
                : Typesetter.set(book, setting);
    }

    /**
     * Makes pages for a browser out of the book that was set.
     *
     * @param linkedData JSON-LD for a coin's page
     * @param sink       takes the files; with an error among the findings they are not complete
     */
    public static Findings web(Checked checked, Publication publication, Function<DataRow, String> linkedData, Sink sink,
                               Progress progress) throws IOException {
        progress.starts(Stage.WEB);
        Setting setting = Setting.of(checked.catalogue().orElseThrow(), publication.tree(),
                () -> stamp(checked.source()), progress::reached);
        Map<String, String> texts = new LinkedHashMap<>();
        publication.rows().forEach(row -> texts.put(Anchors.coin(row.id()), linkedData.apply(row)));
        return Judgement.of(WebBook.write(publication.book(), setting, texts, publication.data(), sink), checked.catalogue());
    }
}
