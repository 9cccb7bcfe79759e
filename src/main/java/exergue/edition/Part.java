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

    record Contents(String id, List<Inline> heading) implements Part { }

    /** A chapter from Markdown, or one the tool writes, such as the methods statement. */
    record Text(String id, List<Inline> heading, List<Prose> blocks) implements Part { }

    record Entries(String id, List<Inline> heading, List<EntryBlock> blocks) implements Part { }

    record WorksCited(String id, List<Inline> heading, List<WorkLine> works) implements Part { }

    /** @param legend scale and credits, sentences for below the last plate */
    record Plates(String id, List<Inline> heading, List<Plate> plates, List<String> legend) implements Part { }

    /** @param rest after the title: in what, volume, place, pages; already in order */
    record WorkLine(String id, String sign, List<Inline> full) { }
}
