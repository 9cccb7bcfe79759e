package exergue.source.markdown;

import exergue.finding.Place;
import exergue.model.Caption;
import exergue.model.Inline;
import exergue.model.Prose;
import exergue.source.text.NamedFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.commonmark.ext.footnotes.FootnoteDefinition;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.Image;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.Text;
import org.commonmark.node.ThematicBreak;

/** The blocks of a chapter or a note. */
final class BlockReader {

    private static final String AS_PARAGRAPH = "It is printed as a plain paragraph. ";

    private final Manuscript manuscript;
    private FootnoteCalls footnotes;
    private CaptionLines captions;
    private int depth;

    /** Of an entry, whose prose has no footnotes and no captions. */
    BlockReader(Manuscript manuscript) {
        this.manuscript = manuscript;
        this.footnotes = FootnoteCalls.refusedBy("An entry", manuscript);
        this.captions = CaptionLines.refusedBy(manuscript);
    }

    List<Prose> chapter(Node document) {
        Footnotes notes = new Footnotes(document, manuscript, this::footnote);
        footnotes = notes;
        captions = CaptionLines.of(manuscript);
        List<Prose> blocks = blocks(document);
        notes.reportNeverCalled();
        return blocks;
    }

    List<Prose> blocks(Node parent) {
        List<Prose> blocks = new ArrayList<>();
        if (depth == MarkdownReader.DEEPEST) {
            MarkdownReader.reportTangled(manuscript, InlineReader.place(parent, manuscript));
            return blocks;
        }
        depth++;
        for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
            block(node, blocks);
        }
        depth--;
        return captions.joined(blocks);
    }

    private void block(Node node, List<Prose> blocks) {
        Place place = InlineReader.place(node, manuscript);
        if (node instanceof Paragraph) {
            paragraph(node, place, blocks);
        } else if (node instanceof Heading heading) {
            blocks.add(new Prose.Heading(heading.getLevel(), inline(node, refusing("A heading")), place));
        } else if (node instanceof BlockQuote) {
            blocks.add(new Prose.Quotation(blocks(node), place));
        } else if (node instanceof ListBlock list) {
            blocks.add(items(list, place));
        } else if (node instanceof TableBlock) {
            blocks.add(table(node, place));
        } else if (node instanceof ThematicBreak) {
            blocks.add(new Prose.Rule(place));
        } else if (node instanceof FencedCodeBlock figures && FigureBlock.isOne(figures) && manuscript.studies()) {
            blocks.add(FigureBlock.read(figures, manuscript));
        } else if (!(node instanceof FootnoteDefinition)) {
            refused(node, place, blocks);
        }
    }

    private void refused(Node node, Place place, List<Prose> blocks) {
        if (node instanceof HtmlBlock html) {
            manuscript.report(MarkdownCodes.RAW_HTML, place,
                    "“" + html.getLiteral().lines().findFirst().orElse("") + "” is HTML, which the prose of a catalogue does not use.",
                    "Delete it, and write what is meant in plain words or Markdown.");
        } else if (node instanceof IndentedCodeBlock code) {
            manuscript.report(MarkdownCodes.UNSUPPORTED_MARKDOWN, place,
                    "Lines indented by four spaces are program text in Markdown, which a catalogue does not have.",
                    AS_PARAGRAPH + "Take the spaces away.");
            blocks.add(words(code.getLiteral(), place));
        } else if (node instanceof FencedCodeBlock code) {
            manuscript.report(MarkdownCodes.UNSUPPORTED_MARKDOWN, place,
                    "Lines between ``` or ~~~ are program text in Markdown, which a catalogue does not have.",
                    AS_PARAGRAPH + "Take the marks away.");
            blocks.add(words(code.getLiteral(), place));
        } else if (!(node instanceof LinkReferenceDefinition note && note.getLabel().startsWith("^"))) {
            manuscript.report(MarkdownCodes.UNSUPPORTED_MARKDOWN, place,
                    "A line such as “[name]: address” is not printed: Markdown takes it for a note on links.",
                    "Write the address where the link stands: [words](https://…).");
        }
    }

    private Prose words(String literal, Place place) {
        String line = manuscript.composed().apply(literal.strip().replace('\n', ' '));
        return new Prose.Paragraph(List.of(new Inline.Words(line)), place);
    }

    private void paragraph(Node node, Place place, List<Prose> blocks) {
        InlineReader reader = new InlineReader(manuscript, footnotes);
        List<Inline> runs = reader.read(node);
        if (!Inline.plain(runs).isBlank() || runs.stream().anyMatch(BlockReader::printsWithoutWords)) {
            blocks.add(new Prose.Paragraph(runs, place));
        }
        reader.pictures().forEach(image -> picture(image).ifPresent(blocks::add));
    }

    private static boolean printsWithoutWords(Inline run) {
        return run instanceof Inline.CrossReference || run instanceof Inline.Footnote;
    }

    /** The paragraphs of a footnote, which are all it has. */
    private List<Inline> footnote(Node text) {
        List<Inline> runs = new ArrayList<>();
        for (Node node = text.getFirstChild(); node != null; node = node.getNext()) {
            if (!(node instanceof Paragraph)) {
                manuscript.report(MarkdownCodes.UNSUPPORTED_MARKDOWN, InlineReader.place(node, manuscript),
                        "A footnote has paragraphs only, so this is not printed.", "Put lists, tables and quotations into the text above.");
                continue;
            }
            if (!runs.isEmpty()) {
                runs.add(new Inline.LineBreak());
            }
            runs.addAll(inline(node, refusing("A footnote")));
        }
        return runs;
    }

    private FootnoteCalls refusing(String line) {
        return FootnoteCalls.refusedBy(line, manuscript);
    }

    private List<Inline> inline(Node node, FootnoteCalls calls) {
        InlineReader reader = new InlineReader(manuscript, calls);
        List<Inline> runs = reader.read(node);
        for (Image image : reader.pictures()) {
            manuscript.report(MarkdownCodes.UNSUPPORTED_MARKDOWN, InlineReader.place(image, manuscript),
                    "A picture cannot stand inside a heading, a table or a single line.",
                    "Put it in a paragraph of its own.");
        }
        return runs;
    }

    List<Inline> line(Node document) {
        List<Inline> runs = new ArrayList<>();
        for (Node node = document.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof Paragraph) {
                if (!runs.isEmpty()) {
                    runs.add(new Inline.LineBreak());
                }
                runs.addAll(inline(node, footnotes));
            } else {
                refused(node, InlineReader.place(node, manuscript), new ArrayList<>());
            }
        }
        return runs;
    }

    private Optional<Prose> picture(Image image) {
        Place place = InlineReader.place(image, manuscript);
        String written = image.getDestination();
        String beside = manuscript.folder().isEmpty() ? written : manuscript.folder() + "/" + written;
        Optional<String> relative = exergue.files.Paths.inside(beside).filter(manuscript.house().files()::contains);
        Optional<String> path = relative.isPresent() ? relative : new NamedFile(written, place, manuscript.path())
                .find(manuscript.house().files()::contains, NamedFile.MISSING_PHOTOGRAPH, manuscript.house().files(),
                        manuscript.house().notebook());
        String alternative = plain(image);
        if (alternative.isBlank()) {
            manuscript.report(MarkdownCodes.PICTURE_WITHOUT_WORDS, place,
                    "The picture “" + written + "” has no words for readers who cannot see it.",
                    "Say in the square brackets what is to be seen: ![The harbour from the north](" + written + ").");
        }
        String title = image.getTitle() == null ? "" : image.getTitle();
        return path.map(p -> new Prose.Picture(p, alternative, caption(title), place));
    }

    private Optional<Caption> caption(String title) {
        return title.isBlank() ? Optional.empty() : Optional.of(Caption.of(Caption.Kind.FIGURE,
                new InlineReader(manuscript, refusing("A caption")).read(MarkdownReader.LINES.parse(title).getFirstChild())));
    }

    private String plain(Node parent) {
        StringBuilder words = new StringBuilder();
        for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
            words.append(node instanceof Text text ? text.getLiteral() : plain(node));
        }
        return manuscript.composed().apply(words.toString());
    }

    private Prose items(ListBlock list, Place place) {
        List<List<Prose>> items = new ArrayList<>();
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            items.add(blocks(item));
        }
        int start = list instanceof OrderedList ordered && ordered.getMarkerStartNumber() != null
                ? ordered.getMarkerStartNumber() : 1;
        return new Prose.Items(list instanceof OrderedList, start, items, place);
    }

    private Prose table(Node table, Place place) {
        List<String> align = new ArrayList<>();
        List<List<Inline>> head = new ArrayList<>();
        List<List<List<Inline>>> rows = new ArrayList<>();
        for (Node part = table.getFirstChild(); part != null; part = part.getNext()) {
            for (Node row = part.getFirstChild(); row != null; row = row.getNext()) {
                List<List<Inline>> cells = new ArrayList<>();
                for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
                    cells.add(inline(cell, part instanceof TableHead ? refusing("The head of a table") : footnotes));
                    if (part instanceof TableHead) {
                        align.add(align((TableCell) cell));
                    }
                }
                if (part instanceof TableHead) {
                    head = cells;
                } else {
                    rows.add(cells);
                }
            }
        }
        return new Prose.Table(align, head, rows, place);
    }

    private static String align(TableCell cell) {
        return cell.getAlignment() == null ? "left" : switch (cell.getAlignment()) {
            case LEFT -> "left";
            case CENTER -> "center";
            case RIGHT -> "right";
        };
    }
}
