package exergue.model;

import exergue.finding.Place;
import java.util.List;

/** A block of prose, from a Markdown chapter or a note. Raw HTML does not exist here. */
public sealed interface Prose {

    Place place();

    record Paragraph(List<Inline> runs, Place place) implements Prose {
        public Paragraph {
            runs = List.copyOf(runs);
        }
    }

    /** @param level 1 for the chapter's own title */
    record Heading(int level, List<Inline> runs, Place place) implements Prose {
        public Heading {
            runs = List.copyOf(runs);
        }
    }

    record Quotation(List<Prose> blocks, Place place) implements Prose {
        public Quotation {
            blocks = List.copyOf(blocks);
        }
    }

    record Items(boolean numbered, int start, List<List<Prose>> items, Place place) implements Prose {
        public Items {
            items = List.copyOf(items);
        }
    }

    /** @param align one of "left", "center", "right" a column */
    record Table(List<String> align, List<List<Inline>> head, List<List<List<Inline>>> rows, Place place)
            implements Prose {
        public Table {
            align = List.copyOf(align);
            head = List.copyOf(head);
            rows = List.copyOf(rows);
        }
    }

    /** @param path inside the tree; @param alternative what a reader who cannot see it is told */
    record Picture(String path, String alternative, List<Inline> caption, Place place) implements Prose {
        public Picture {
            caption = List.copyOf(caption);
        }
    }

    record Rule(Place place) implements Prose { }
}
