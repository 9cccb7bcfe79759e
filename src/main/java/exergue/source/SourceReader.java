package exergue.source;

import exergue.files.Tree;
import exergue.measure.Convention;
import exergue.model.Apparatus;
import exergue.model.Catalogue;
import exergue.model.Chapter;
import exergue.model.Coin;
import exergue.model.HouseStyle;
import exergue.model.Language;
import exergue.model.NaturalOrder;
import exergue.model.Type;
import exergue.model.Work;
import exergue.model.Written;
import exergue.source.keys.CatalogueFile;
import exergue.source.keys.FileKind;
import exergue.source.markdown.Manuscript;
import exergue.source.markdown.MarkdownReader;
import exergue.source.shape.Desk;
import exergue.source.shape.PathTexts;
import exergue.source.text.Notebook;
import exergue.source.text.TextReader;
import exergue.source.works.WorksReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Reads a whole tree: every file once, all findings in one run. */
public final class SourceReader {

    /** What stands until the house style is read; nothing before it has prose. */
    private static final HouseStyle.Quotes STRAIGHT = new HouseStyle.Quotes("\"", "\"", "'", "'");

    private final Notebook notebook = new Notebook();
    private final Tree tree;
    private final Set<String> files;
    private final Set<String> seen = new LinkedHashSet<>();
    private final TextReader texts;
    private final EntryReader entries;
    private final KeptEntries kept;

    private SourceReader(Tree tree, KeptEntries kept) throws IOException {
        this.tree = tree;
        this.kept = kept;
        this.files = new LinkedHashSet<>(tree.files());
        this.texts = new TextReader(tree, notebook);
        this.entries = new EntryReader(texts, notebook);
    }

    /** Sets up the tables of keys, which is otherwise done when the first file is read. */
    public static void getReady() {
        FileKind.COIN.wanted();
    }

    /** @throws IOException if the disk fails, never because of what a file says */
    public static Loaded read(Tree tree) throws IOException {
        return read(tree, KeptEntries.nothing());
    }

    /**
     * Reads a tree that may have been read before: of its types and coins only those whose files have changed.
     *
     * @param kept what was kept of the last time, and is kept for the next
     * @throws IOException if the disk fails, never because of what a file says
     */
    public static Loaded read(Tree tree, KeptEntries kept) throws IOException {
        return new SourceReader(tree, kept).read();
    }

    private Loaded read() throws IOException {
        Inventory inventory = new Inventory(files, notebook);
        Desk desk = new Desk(notebook, files, STRAIGHT, Map.of(), language(), List.of());
        HouseStyle style = single(FileKind.HOUSE_STYLE, desk);
        desk = desk.with(style);
        Map<String, Written<Convention>> conventions = single(FileKind.CONVENTIONS, desk);
        desk = desk.with(conventions);
        Optional<CatalogueFile> own = Optional.empty();
        if (files.contains(FileKind.CATALOGUE.where())) {
            seen.add(FileKind.CATALOGUE.where());
            own = entries.read(FileKind.CATALOGUE, FileKind.CATALOGUE.where(), desk);
        } else {
            inventory.reportNoCatalogue();
        }
        Catalogue catalogue = catalogue(own, style, desk);
        plansOfLists(desk);
        new PictureFiles(tree, notebook).look(catalogue);
        notebook.complete(LikelierGr.in(catalogue)::saidOf);
        if (own.isPresent()) {
            inventory.reportUnread(seen, own.get().templates().own());
        }
        return new Loaded(own.map(file -> catalogue), notebook.findings(), notebook.unread());
    }

    /** What a house style means that says nothing, hangs on the language, which stands in a file that is read after it. */
    private Language language() throws IOException {
        String file = FileKind.CATALOGUE.where();
        return files.contains(file) ? entries.glance(file, "language").flatMap(Language::of).orElse(Language.ENGLISH)
                : Language.ENGLISH;
    }

    private Catalogue catalogue(Optional<CatalogueFile> own, HouseStyle style, Desk desk) throws IOException {
        CatalogueFile file = own.orElseGet(() -> entries.standIn(FileKind.CATALOGUE, FileKind.CATALOGUE.where(), desk));
        return new Catalogue(file.title(), file.plan(), style, desk.conventions(), works(desk),
                single(FileKind.MINTS, desk), single(FileKind.RULERS, desk), single(FileKind.FIND_SPOTS, desk),
                single(FileKind.COLLECTIONS, desk), folder(FileKind.TYPE, desk, Type::id), folder(FileKind.COIN, desk, Coin::id),
                chapters(file, desk), apparatus(file, desk), file.templates(), file.citationStyle(), file.groups());
    }

    private Map<String, Work> works(Desk desk) throws IOException {
        seen.addAll(List.of(WorksReader.JSON, WorksReader.BIB));
        return WorksReader.read(single(FileKind.WORKS, desk), files, texts, notebook);
    }

    private Apparatus apparatus(CatalogueFile file, Desk desk) throws IOException {
        Apparatus former = single(FileKind.FORMER_NUMBERS, desk);
        return new Apparatus(single(FileKind.INDEX, desk), former.edition(), former.former(), file.pictures());
    }

    /** A file that may be missing; then what counts is what an empty one would say. */
    private <T> T single(FileKind<T> kind, Desk desk) throws IOException {
        if (!files.contains(kind.where())) {
            return entries.standIn(kind, kind.where(), desk);
        }
        seen.add(kind.where());
        Optional<T> read = entries.read(kind, kind.where(), desk);
        return read.orElseGet(() -> entries.standIn(kind, kind.where(), desk));
    }

    /** The files of a folder know nothing of each other, so that all processors read; what each finds is its own. */
    private <T> List<T> folder(FileKind<T> kind, Desk desk, Function<T, Written<String>> id) throws IOException {
        List<String> wanted = files.stream().filter(file -> file.startsWith(kind.where()) && file.endsWith(".yaml")).toList();
        seen.addAll(wanted);
        KeptEntries.Folder<T> before = kept.folder(kind, desk);
        List<Apart<T>> read;
        try {
            read = wanted.parallelStream().map(file -> before.or(tree, file, () -> apart(kind, file, desk))).toList();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        read.forEach(entry -> notebook.add(entry.found()));
        List<T> all = new ArrayList<>(read.stream().map(Apart::entry).toList());
        Comparator<T> byId = Comparator.comparing(entry -> id.apply(entry).value(), NaturalOrder.INSTANCE);
        all.sort(byId.thenComparing(entry -> id.apply(entry).place()));
        return all;
    }

    /** Nothing of them is in the book; they are looked at with the rest, so that a list can be entered when it comes again. */
    private void plansOfLists(Desk desk) throws IOException {
        for (String file : files) {
            if (file.startsWith(FileKind.LISTS) && file.endsWith(".yaml")) {
                seen.add(file);
                entries.read(FileKind.list(), file, desk);
            }
        }
    }

    private <T> Apart<T> apart(FileKind<T> kind, String file, Desk desk) {
        Notebook own = new Notebook();
        EntryReader reader = new EntryReader(new TextReader(tree, own), own);
        Desk ownDesk = desk.with(own);
        try {
            return new Apart<>(reader.read(kind, file, ownDesk).orElseGet(() -> reader.standIn(kind, file, ownDesk)), own);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Map<String, Chapter> chapters(CatalogueFile file, Desk desk) throws IOException {
        Manuscript.House house = new Manuscript.House(notebook, files, desk.quotes(), desk.wordings());
        Map<String, Chapter> chapters = new LinkedHashMap<>();
        List<Written<String>> parts = new ArrayList<>(file.plan().front());
        parts.addAll(file.plan().body());
        parts.addAll(file.plan().back());
        for (Written<String> part : parts) {
            boolean methods = part.value().equals("methods") && files.contains(Chapter.METHODS);
            String path = methods ? Chapter.METHODS : part.value();
            if (PathTexts.PARTS.contains(path) || path.isEmpty() || !seen.add(path)) {
                continue;
            }
            texts.read(path).ifPresentOrElse(text -> chapters.put(path, MarkdownReader.chapter(text, house)), () -> notebook.leaveUnread(path));
        }
        return Collections.unmodifiableMap(chapters);
    }
}
