package exergue.source.markdown;

import exergue.finding.Place;
import exergue.model.Chapter;
import exergue.model.Inline;
import exergue.model.Phrase;
import exergue.model.Prose;
import exergue.source.text.SourceText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.commonmark.Extension;
import org.commonmark.ext.footnotes.FootnotesExtension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

/** Markdown to prose: chapters, notes, single lines. Nothing of it passes through unread. */
public final class MarkdownReader {

    /** Everything is a paragraph: a line that begins with "1." or "#" is no list and no heading. */
    static final Parser LINES = Parser.builder().enabledBlockTypes(Set.of())
            .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES).build();

    private static final Parser NOTES = parser(TablesExtension.create());
    private static final Parser CHAPTERS = parser(TablesExtension.create(), FootnotesExtension.create());

    /** Quotations and lists in each other, or emphasis in emphasis. */
    static final int DEEPEST = 12;

    /** About twenty printed pages. */
    private static final int LONGEST_PARAGRAPH = 60_000;

    private MarkdownReader() { }

    private static Parser parser(Extension... extensions) {
        return Parser.builder().extensions(List.of(extensions)).includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES).build();
    }

    /** One line in an entry. */
    public static Phrase line(Manuscript manuscript, Place place) {
        return new Phrase(untangled(manuscript, () -> new BlockReader(manuscript).line(LINES.parse(manuscript.text())))
                .orElse(List.of()), place);
    }

    /** Paragraphs in an entry; they have no headings. */
    public static List<Prose> note(Manuscript manuscript) {
        List<Prose> blocks = new ArrayList<>();
        for (Prose block : untangled(manuscript, () -> new BlockReader(manuscript).blocks(NOTES.parse(manuscript.text())))
                .orElse(List.of())) {
            if (block instanceof Prose.Heading heading) {
                manuscript.report(MarkdownCodes.UNSUPPORTED_MARKDOWN, heading.place(),
                        "“" + Inline.plain(heading.runs()) + "” is a heading, and a note has none.",
                        "Take the # away; it is printed as a paragraph in bold.");
                blocks.add(new Prose.Paragraph(List.of(new Inline.Strong(heading.runs())), heading.place()));
            } else {
                blocks.add(block);
            }
        }
        return blocks;
    }

    /** A chapter: its title, and the blocks after the title. */
    public static Chapter chapter(SourceText source, Manuscript.House house) {
        Manuscript manuscript = Manuscript.of(source, house);
        Optional<List<Prose>> read = untangled(manuscript,
                () -> new BlockReader(manuscript).chapter(CHAPTERS.parse(manuscript.text())));
        if (read.isEmpty()) {
            return new Chapter(source.file(), List.of(), List.of());
        }
        List<Prose> blocks = read.get();
        List<Inline> title = List.of();
        if (!blocks.isEmpty() && blocks.get(0) instanceof Prose.Heading first && first.level() == 1) {
            title = first.runs();
            blocks = blocks.subList(1, blocks.size());
        } else {
            Place place = blocks.isEmpty() ? Place.ofFile(source.file()) : blocks.get(0).place();
            manuscript.report(MarkdownCodes.CHAPTER_WITHOUT_TITLE, place, "The chapter does not begin with its title.",
                    "Begin the file with a line such as “# The mint and its dies”.");
        }
        return new Chapter(source.file(), title, Headings.inOrder(blocks, manuscript));
    }

    /** Some signs make the parser look ahead to the end of the paragraph, again and again: so paragraphs must end. */
    private static boolean hasEndlessParagraph(Manuscript manuscript) {
        String text = manuscript.text();
        for (int start = 0; text.length() - start > LONGEST_PARAGRAPH;) {
            int end = text.indexOf("\n\n", start);
            if ((end < 0 ? text.length() : end) - start > LONGEST_PARAGRAPH) {
                manuscript.report(MarkdownCodes.PARAGRAPH_TOO_LONG, manuscript.at(start, 1),
                        "The paragraph that begins here has more than " + LONGEST_PARAGRAPH + " characters.",
                        "Put empty lines between its paragraphs.");
                return true;
            }
            start = end + 2;
        }
        return false;
    }

    static void reportTangled(Manuscript manuscript, Place place) {
        manuscript.report(MarkdownCodes.TANGLED_PROSE, place, "Emphasis, quotations or lists are nested more than "
                + DEEPEST + " deep here.", "Write it plainly.");
    }

    /**
     * The parser follows nesting by calling itself; text built to nest thousands deep would end the whole program,
     * so running out of depth is taken as what it is: a fault of that text.
     */
    private static <T> Optional<T> untangled(Manuscript manuscript, Supplier<T> reading) {
        if (hasEndlessParagraph(manuscript)) {
            return Optional.empty();
        }
        try {
            return Optional.of(reading.get());
        } catch (StackOverflowError tooDeep) {
            reportTangled(manuscript, manuscript.at(0, 1));
            return Optional.empty();
        }
    }
}
