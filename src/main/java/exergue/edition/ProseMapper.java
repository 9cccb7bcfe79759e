package exergue.edition;

import exergue.model.Caption;
import exergue.model.Inline;
import exergue.model.Prose;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * Copies prose, putting each run of the innermost kind (words, cross-references, line breaks) through one change, and
 * each caption, in the order of the text, through another.
 */
final class ProseMapper {

    private final Function<Inline, Inline> change;
    private final UnaryOperator<Caption> captions;
    private final Function<Prose.Figures, List<Prose>> figures;

    ProseMapper(Function<Inline, Inline> change) {
        this(change, UnaryOperator.identity());
    }

    ProseMapper(Function<Inline, Inline> change, UnaryOperator<Caption> captions) {
        this(change, captions, null);
    }

    private ProseMapper(Function<Inline, Inline> change, UnaryOperator<Caption> captions, Function<Prose.Figures, List<Prose>> figures) {
        this.change = change;
        this.captions = captions;
        this.figures = figures;
    }

    /** @param figures what stands in the place of a block of figures */
    static ProseMapper studying(Function<Inline, Inline> change, Function<Prose.Figures, List<Prose>> figures) {
        return new ProseMapper(change, UnaryOperator.identity(), figures);
    }

    List<Prose> blocks(List<Prose> blocks) {
        List<Prose> mapped = new ArrayList<>();
        for (Prose block : blocks) {
            Prose copied = block(block);
            if (figures != null && copied instanceof Prose.Figures asked) {
                mapped.addAll(figures.apply(asked));
            } else {
                mapped.add(copied);
            }
        }
        return List.copyOf(mapped);
    }

    List<Inline> runs(List<Inline> runs) {
        return runs.stream().map(this::run).toList();
    }

    private Inline run(Inline run) {
        if (run instanceof Inline.Emphasis emphasis) {
            return new Inline.Emphasis(runs(emphasis.runs()));
        }
        if (run instanceof Inline.Strong strong) {
            return new Inline.Strong(runs(strong.runs()));
        }
        if (run instanceof Inline.Link link) {
            return new Inline.Link(link.address(), runs(link.runs()));
        }
        if (run instanceof Inline.Footnote note) {
            return new Inline.Footnote(note.number(), runs(note.runs()), note.place());
        }
        return change.apply(run);
    }

    private Prose block(Prose block) {
        if (block instanceof Prose.Paragraph paragraph) {
            return new Prose.Paragraph(runs(paragraph.runs()), paragraph.place());
        }
        if (block instanceof Prose.Heading heading) {
            return new Prose.Heading(heading.level(), runs(heading.runs()), heading.place());
        }
        if (block instanceof Prose.Quotation quotation) {
            return new Prose.Quotation(blocks(quotation.blocks()), quotation.place());
        }
        if (block instanceof Prose.Items items) {
            List<List<Prose>> mapped = new ArrayList<>();
            items.items().forEach(item -> mapped.add(blocks(item)));
            return new Prose.Items(items.numbered(), items.start(), mapped, items.place());
        }
        if (block instanceof Prose.Table table) {
            return new Prose.Table(table.align(), cells(table.head()),
                    table.rows().stream().map(this::cells).toList(), caption(table), table.place());
        }
        if (block instanceof Prose.Picture picture) {
            return picture.captioned(caption(picture));
        }
        if (block instanceof Prose.Figures asked) {
            return asked.captioned(caption(asked));
        }
        if (block instanceof Prose.Drawing drawing) {
            return drawing.captioned(caption(drawing));
        }
        if (block instanceof Prose.Note note) {
            return new Prose.Note(runs(note.runs()), note.place());
        }
        return block;
    }

    private Optional<Caption> caption(Prose.Captioned block) {
        return block.caption().map(caption -> captions.apply(caption.with(runs(caption.runs()))));
    }

    private List<List<Inline>> cells(List<List<Inline>> cells) {
        return cells.stream().map(this::runs).toList();
    }
}
