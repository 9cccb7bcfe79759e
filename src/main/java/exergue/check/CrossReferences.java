package exergue.check;

import exergue.model.Catalogue;
import exergue.model.Chapter;
import exergue.model.Inline;
import exergue.model.Phrase;
import exergue.model.Prose;
import exergue.model.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Collects the cross-references of all prose: chapters, notes, descriptions, title matter. */
public final class CrossReferences {

    private final List<Inline.CrossReference> found = new ArrayList<>();

    private CrossReferences() { }

    public static List<Inline.CrossReference> in(Catalogue catalogue) {
        CrossReferences all = new CrossReferences();
        for (Chapter chapter : catalogue.chapters().values()) {
            all.runs(chapter.title());
            all.blocks(chapter.blocks());
        }
        catalogue.title().notice().ifPresent(line -> all.runs(line.runs()));
        catalogue.title().imprint().forEach(line -> all.runs(line.runs()));
        catalogue.mints().values().forEach(mint -> all.line(mint.note()));
        catalogue.rulers().values().forEach(ruler -> all.line(ruler.note()));
        catalogue.types().forEach(type -> all.entry(type.obverse(), type.reverse(), type.note()));
        catalogue.coins().forEach(coin -> all.entry(coin.obverse(), coin.reverse(), coin.note()));
        return all.found;
    }

    private void entry(Side obverse, Side reverse, List<Prose> note) {
        line(obverse.description());
        line(reverse.description());
        blocks(note);
    }

    private void line(Optional<Phrase> line) {
        line.ifPresent(phrase -> runs(phrase.runs()));
    }

    private void blocks(List<Prose> blocks) {
        blocks.forEach(this::block);
    }

    private void block(Prose block) {
        if (block instanceof Prose.Paragraph paragraph) {
            runs(paragraph.runs());
        } else if (block instanceof Prose.Heading heading) {
            runs(heading.runs());
        } else if (block instanceof Prose.Quotation quotation) {
            blocks(quotation.blocks());
        } else if (block instanceof Prose.Items items) {
            items.items().forEach(this::blocks);
        } else if (block instanceof Prose.Table table) {
            caption(table);
            table.head().forEach(this::runs);
            table.rows().forEach(row -> row.forEach(this::runs));
        } else if (block instanceof Prose.Picture picture) {
            caption(picture);
        } else if (block instanceof Prose.Figures figures) {
            caption(figures);
        }
    }

    private void caption(Prose.Captioned block) {
        block.caption().ifPresent(caption -> runs(caption.runs()));
    }

    private void runs(List<Inline> runs) {
        for (Inline run : runs) {
            if (run instanceof Inline.CrossReference reference) {
                found.add(reference);
            } else if (run instanceof Inline.Emphasis emphasis) {
                runs(emphasis.runs());
            } else if (run instanceof Inline.Strong strong) {
                runs(strong.runs());
            } else if (run instanceof Inline.Link link) {
                runs(link.runs());
            } else if (run instanceof Inline.Footnote note) {
                runs(note.runs());
            }
        }
    }
}
