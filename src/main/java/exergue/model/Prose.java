package exergue.model;

import exergue.finding.Place;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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

    /** A block that can have a caption and then is numbered through the book. */
    sealed interface Captioned extends Prose {

        Optional<Caption> caption();

        /** The same block under another caption. */
        Captioned captioned(Optional<Caption> other);
    }

    /** @param align one of "left", "center", "right" a column */
    record Table(List<String> align, List<List<Inline>> head, List<List<List<Inline>>> rows, Optional<Caption> caption,
                 Place place) implements Captioned {
        public Table {
            align = List.copyOf(align);
            head = List.copyOf(head);
            rows = List.copyOf(rows);
        }

        /** Without a caption. */
        public Table(List<String> align, List<List<Inline>> head, List<List<List<Inline>>> rows, Place place) {
            this(align, head, rows, Optional.empty(), place);
        }

        @Override
        public Table captioned(Optional<Caption> other) {
            return new Table(align, head, rows, other, place);
        }
    }

    /** @param path inside the tree; @param alternative what a reader who cannot see it is told */
    record Picture(String path, String alternative, Optional<Caption> caption, Place place) implements Captioned {

        @Override
        public Picture captioned(Optional<Caption> other) {
            return new Picture(path, alternative, other, place);
        }
    }

    /**
     * A table or chart that is to be made from the coins; in the finished book such tables and drawings stand in its place.
     *
     * @param said what the author wrote under each key
     */
    record Figures(Map<FigureKey, Written<String>> said, Optional<Caption> caption, Place place) implements Captioned {
        public Figures {
            said = said.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(said));
        }

        @Override
        public Figures captioned(Optional<Caption> other) {
            return new Figures(said, other, place);
        }
    }

    /** A chart, drawn. @param svg without a size on paper: {@code viewBox} is in points; @param alternative what it shows, in words */
    record Drawing(String svg, String alternative, Optional<Caption> caption, Place place) implements Captioned {

        @Override
        public Drawing captioned(Optional<Caption> other) {
            return new Drawing(svg, alternative, other, place);
        }
    }

    /** Small print under a table or chart: how its figures were reckoned. */
    record Note(List<Inline> runs, Place place) implements Prose {
        public Note {
            runs = List.copyOf(runs);
        }
    }

    record Rule(Place place) implements Prose { }
}
