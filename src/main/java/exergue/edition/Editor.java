package exergue.edition;

import exergue.edition.apparatus.Concordances;
import exergue.edition.apparatus.FindTables;
import exergue.edition.apparatus.Indexes;
import exergue.edition.apparatus.Locators;
import exergue.edition.apparatus.PictureCredits;
import exergue.edition.figures.ChapterFigures;
import exergue.edition.methods.MethodsLanguage;
import exergue.edition.methods.english.EnglishMethods;
import exergue.edition.methods.french.FrenchMethods;
import exergue.edition.methods.german.GermanMethods;
import exergue.edition.methods.italian.ItalianMethods;
import exergue.finding.Findings;
import exergue.model.BookPlan;
import exergue.model.BookWord;
import exergue.model.Caption;
import exergue.model.Catalogue;
import exergue.model.Chapter;
import exergue.model.IndexStyle;
import exergue.model.Inline;
import exergue.model.Language;
import exergue.model.Phrase;
import exergue.model.Prose;
import exergue.model.TitleMatter;
import exergue.model.Type;
import exergue.model.Work;
import exergue.model.Written;
import exergue.photo.print.PrintedCoins;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Makes the book out of the catalogue: every part of the author's plan, in order, with everything that is printed in it. */
public final class Editor {

    /** @param findings what the editor alone can see: author's figures that the counts do not bear out */
    public record Edited(Book book, Findings findings) { }

    private final Catalogue catalogue;
    private final Map<String, List<Inline>> works;
    private final boolean abbreviations;
    private final BookWords words;
    private final BookOrder order;
    private final ProseParts prose;
    private final List<Caption> captions;
    private final CrossReferences references;
    private final Optional<PlatesMaker> plates;
    private final EntriesMaker entries;
    private final MethodsChapter methods;
    private final Indexes indexes;
    private final Locators locators;
    private final ChapterFigures studied;
    private final ProseMapper studies;
    private final Set<String> anchors = new HashSet<>();

    private Editor(Catalogue catalogue, Map<String, List<Inline>> works, PrintedCoins pictures, PageMap pages) {
        Language language = Language.of(catalogue.title().language().value()).orElse(Language.ENGLISH);
        this.catalogue = catalogue;
        this.works = works;
        this.abbreviations = catalogue.plan().has("abbreviations");
        this.words = new BookWords(language, catalogue.style().words());
        this.order = BookOrder.of(catalogue);
        Numbering numbers = Numbering.of(order);
        this.indexes = Indexes.of(catalogue, order);
        this.locators = new Locators(numbers, pages);
        this.methods = MethodsChapter.of(catalogue, order, numbers, methods(language));
        this.studied = new ChapterFigures(catalogue, language);
        this.studies = ProseMapper.studying(studied::inline, studied::blocks);
        CaptionNumbers captions = new CaptionNumbers(words);
        this.prose = ProseParts.of(catalogue.plan(), captions, this::prose);
        this.references = CrossReferences.of(catalogue, order, numbers, anchor -> page(anchor, pages))
                .andTo(captions.all(), anchor -> page(anchor, pages));
        this.captions = captions.all().stream().map(caption -> caption.with(references.inRuns(caption.runs()))).toList();
        MeasurementLine figures = MeasurementLine.of(catalogue, types(catalogue));
        PictureMaker made = new PictureMaker(numbers, words, pictures, catalogue.style().pictures().scale());
        this.plates = catalogue.plan().has("plates")
                ? Optional.of(new PlatesMaker(catalogue, order, numbers, words, made)) : Optional.empty();
        EditorsDesk desk = new EditorsDesk(catalogue, numbers, references, words,
                plates.map(PlatesMaker::byCoin).orElse(Map.of()));
        this.entries = new EntriesMaker(catalogue, new EntryMaker(desk, new SpecimenMaker(desk, figures, made)), references);
    }

    /**
     * The book of a catalogue that has no errors; what leads nowhere in one that has is left out or shows its id.
     *
     * @param works full references that a citation style has set, by the id of the work
     * @param pages of the book as it was set before, for those who want page numbers; not known at first
     */
    public static Edited edit(Catalogue catalogue, Map<String, List<Inline>> works, PageMap pages) {
        return edit(catalogue, works, PrintedCoins.unopened(catalogue), pages);
    }

    /** The same with pictures that have been made ready for the page. */
    public static Edited edit(Catalogue catalogue, Map<String, List<Inline>> works, PrintedCoins pictures, PageMap pages) {
        Editor editor = new Editor(catalogue, works, pictures, pages);
        Book book = editor.book();
        return new Edited(book, editor.methods.findings().and(Findings.of(editor.indexes.findings()))
                .and(Findings.of(editor.studied.findings()))
                .and(Findings.of(PlateTones.of(editor.plates.map(PlatesMaker::plates).orElse(List.of()), catalogue, pictures))));
    }

    /** ", p. 47", if the house wants it and the page is known. */
    private String page(String anchor, PageMap pages) {
        return catalogue.style().indexes().crossReferences() == IndexStyle.CrossReferences.NUMBERS ? ""
                : pages.folio(anchor).map(folio -> ", " + words.of(BookWord.PAGE) + "\u00A0" + folio).orElse("");
    }

    private static MethodsLanguage methods(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishMethods();
            case FRENCH -> new FrenchMethods();
            case GERMAN -> new GermanMethods();
            case ITALIAN -> new ItalianMethods();
        };
    }

    private Book book() {
        BookPlan plan = catalogue.plan();
        return new Book(catalogue.title().language().value(), title(catalogue.title()),
                parts(plan.front()), parts(plan.body()), parts(plan.back()),
                plan.onRight().stream().map(name -> Anchors.part(name.value())).toList());
    }

    private TitleMatter title(TitleMatter title) {
        return new TitleMatter(title.title(), title.subtitle(), title.authors(), title.place(), title.publisher(),
                title.year(), title.series(), title.notice().map(this::resolved),
                title.imprint().stream().map(this::resolved).toList(), title.language());
    }

    private Phrase resolved(Phrase phrase) {
        return new Phrase(references.inRuns(phrase.runs()), phrase.place());
    }

    private List<Part> parts(List<Written<String>> names) {
        List<Part> parts = new ArrayList<>();
        names.forEach(name -> part(name).ifPresent(parts::add));
        return List.copyOf(parts);
    }

    private Optional<Part> part(Written<String> name) {
        String id = unique(Anchors.part(name.value()));
        return switch (name.value()) {
            case "title" -> Optional.of(new Part.TitlePage(id));
            case "imprint" -> Optional.of(new Part.Imprint(id));
            case "contents" -> Optional.of(new Part.Contents(id, heading(words.of(BookWord.CONTENTS))));
            case "lists" -> new BookLists(words, plates.map(PlatesMaker::plates).orElse(List.of()), captions).part(id);
            case "methods" -> text(id, BookWord.METHODS, prose.of(name.value()));
            case "catalogue" -> Optional.of(new Part.Entries(id, heading(words.of(BookWord.CATALOGUE)), entries.of(order)));
            case "works" -> Optional.of(new Part.WorksCited(id, heading(words.of(BookWord.WORKS)),
                    WorkLines.of(catalogue, works, work -> !(abbreviations && work.standard()))));
            case "abbreviations" -> Optional.of(new Part.WorksCited(id, heading(words.of(BookWord.ABBREVIATIONS)),
                    WorkLines.of(catalogue, works, Work::standard)));
            case "plates" -> plates.flatMap(made -> made.part(id));
            case "finds" -> text(id, BookWord.FINDS, prose.of(name.value()));
            case "concordances" -> listings(id, BookWord.CONCORDANCES, BookWord.CONCORDANCE_NOTE,
                    new Concordances(catalogue, order, locators, words).listings(
                            catalogue.works().values().stream().sorted(WorkLines.BY_SIGN).toList()));
            case "indexes" -> listings(id, BookWord.INDEXES, byPages() ? BookWord.INDEX_NOTE_PAGES : BookWord.INDEX_NOTE,
                    indexes.listings(locators, words));
            case "credits" -> text(id, BookWord.CREDITS, PictureCredits.of(order, catalogue.apparatus().pictures(), prose.pictures())
                    .blocks(locators, words, name.place()));
            default -> Optional.ofNullable(catalogue.chapters().get(name.value())).map(chapter ->
                    new Part.Text(id, references.inRuns(studies.runs(chapter.title())), references.in(prose.of(name.value()))));
        };
    }

    /** Of the parts that are prose; cross-references still lead to ids. */
    private List<Prose> prose(Written<String> name) {
        return switch (name.value()) {
            case "methods" -> methods.blocks(name.place());
            case "finds" -> new FindTables(catalogue, order, locators, words, name.place()).blocks();
            default -> Optional.ofNullable(catalogue.chapters().get(name.value())).map(Chapter::blocks)
                    .map(studies::blocks).orElse(List.of());
        };
    }

    private boolean byPages() {
        return catalogue.style().indexes().by() == IndexStyle.By.PAGES;
    }

    /** A part of which there would be nothing but the heading is left out. */
    private Optional<Part> text(String id, BookWord heading, List<Prose> blocks) {
        return blocks.isEmpty() ? Optional.empty()
                : Optional.of(new Part.Text(id, heading(words.of(heading)), references.in(blocks)));
    }

    private Optional<Part> listings(String id, BookWord heading, BookWord note, List<Listing> listings) {
        return listings.isEmpty() ? Optional.empty()
                : Optional.of(new Part.Listings(id, heading(words.of(heading)), heading(words.of(note)),
                        "(" + words.of(BookWord.CONTINUED) + ")", listings));
    }

    private String unique(String anchor) {
        String free = anchor;
        for (int nth = 2; !anchors.add(free); nth++) {
            free = anchor + "-" + nth;
        }
        return free;
    }

    private static List<Inline> heading(String words) {
        return List.of(new Inline.Words(words));
    }

    /** Types by id, for looking up only. */
    static Map<String, Type> types(Catalogue catalogue) {
        Map<String, Type> types = new HashMap<>();
        catalogue.types().forEach(type -> types.put(type.id().value(), type));
        return types;
    }
}
