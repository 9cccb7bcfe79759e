package exergue.edition;

import exergue.model.Inline;
import exergue.model.Prose;
import java.util.List;

/** One part of the book: what starts on a page of its own. */
public sealed interface Part {

    /** Stable anchor, unique in the book. */
    String id();

    /** Heading of the part, also in the contents and the running head; empty for title page, imprint. */
    List<Inline> heading();

    record TitlePage(String id) implements Part {
        @Override
        public List<Inline> heading() {
            return List.of();
        }
    }

    record Imprint(String id) implements Part {
        @Override
        public List<Inline> heading() {
            return List.of();
        }
    }

    record Contents(String id, List<Inline> heading) implements Part {
        public Contents {
            heading = List.copyOf(heading);
        }
    }

    /** Lists of what is numbered in the book. */
    record Lists(String id, List<Inline> heading, List<ListedThings> lists) implements Part {
        public Lists {
            heading = List.copyOf(heading);
            lists = List.copyOf(lists);
        }
    }

    /** @param heading "Tables" */
    record ListedThings(String heading, List<Listed> things) {
        public ListedThings {
            things = List.copyOf(things);
        }
    }

    /** @param anchor where it is; @param label "Table 3"; @param words its caption */
    record Listed(String anchor, String label, List<Inline> words) {
        public Listed {
            words = List.copyOf(words);
        }
    }

    /** A chapter from Markdown, or one the tool writes, such as the methods statement. */
    record Text(String id, List<Inline> heading, List<Prose> blocks) implements Part {
        public Text {
            heading = List.copyOf(heading);
            blocks = List.copyOf(blocks);
        }
    }

    record Entries(String id, List<Inline> heading, List<EntryBlock> blocks) implements Part {
        public Entries {
            heading = List.copyOf(heading);
            blocks = List.copyOf(blocks);
        }
    }

    /**
     * Lists in columns: the concordances, the indexes.
     *
     * @param note      a paragraph before them
     * @param continued follows the heading of a list on every page that it runs on to: "(continued)"
     */
    record Listings(String id, List<Inline> heading, List<Inline> note, String continued, List<Listing> listings)
            implements Part {
        public Listings {
            heading = List.copyOf(heading);
            note = List.copyOf(note);
            listings = List.copyOf(listings);
        }
    }

    record WorksCited(String id, List<Inline> heading, List<WorkLine> works) implements Part {
        public WorksCited {
            heading = List.copyOf(heading);
            works = List.copyOf(works);
        }
    }

    /**
     * @param legend   scale and credits, sentences for below the last plate
     * @param scaleBar drawn at the foot of every plate
     */
    record Plates(String id, List<Inline> heading, List<Plate> plates, List<String> legend, DrawnScale scaleBar) implements Part {
        public Plates {
            heading = List.copyOf(heading);
            plates = List.copyOf(plates);
            legend = List.copyOf(legend);
        }
    }

    /** @param rest after the title: in what, volume, place, pages; already in order */
    record WorkLine(String id, String sign, List<Inline> full) {
        public WorkLine {
            full = List.copyOf(full);
        }
    }
}
