package exergue.edition;

import exergue.finding.Place;
import exergue.model.Inline;
import exergue.model.Prose;
import java.util.ArrayList;
import java.util.List;

/** The words of prose, paragraph by paragraph, cell by cell and footnote by footnote, with the place of the block they stand in. */
final class ProseTexts {

    record Line(String text, Place place) { }

    private final List<Line> lines = new ArrayList<>();

    private ProseTexts() { }

    static List<Line> of(List<Prose> blocks) {
        ProseTexts texts = new ProseTexts();
        blocks.forEach(texts::block);
        return texts.lines;
    }

    private void block(Prose block) {
        if (block instanceof Prose.Paragraph paragraph) {
            line(paragraph.runs(), block.place());
        } else if (block instanceof Prose.Heading heading) {
            line(heading.runs(), block.place());
        } else if (block instanceof Prose.Quotation quotation) {
            quotation.blocks().forEach(this::block);
        } else if (block instanceof Prose.Items items) {
            items.items().forEach(item -> item.forEach(this::block));
        } else if (block instanceof Prose.Table table) {
            caption(table);
            table.head().forEach(cell -> line(cell, block.place()));
            table.rows().forEach(row -> row.forEach(cell -> line(cell, block.place())));
        } else if (block instanceof Prose.Picture picture) {
            caption(picture);
        } else if (block instanceof Prose.Figures figures) {
            caption(figures);
        } else if (block instanceof Prose.Note note) {
            line(note.runs(), block.place());
        } else if (block instanceof Prose.Drawing drawing) {
            caption(drawing);
        }
    }

    private void caption(Prose.Captioned block) {
        block.caption().ifPresent(caption -> line(caption.runs(), block.place()));
    }

    private void line(List<Inline> runs, Place place) {
        String text = Inline.plain(runs);
        if (!text.isEmpty()) {
            lines.add(new Line(text, place));
        }
        footnotes(runs);
    }

    private void footnotes(List<Inline> runs) {
        for (Inline run : runs) {
            if (run instanceof Inline.Footnote note) {
                line(note.runs(), note.place());
            } else if (run instanceof Inline.Emphasis emphasis) {
                footnotes(emphasis.runs());
            } else if (run instanceof Inline.Strong strong) {
                footnotes(strong.runs());
            } else if (run instanceof Inline.Link link) {
                footnotes(link.runs());
            }
        }
    }
}
