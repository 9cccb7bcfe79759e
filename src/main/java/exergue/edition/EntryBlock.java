package exergue.edition;

import exergue.model.Inline;
import exergue.model.Prose;
import java.util.List;
import java.util.Optional;

/** What follows what in the catalogue part. */
public sealed interface EntryBlock {

    /** Anchor, unique in the book. */
    String id();

    record MintHeading(String id, String name, Optional<String> dates, List<Inline> note) implements EntryBlock {
        public MintHeading {
            note = List.copyOf(note);
        }
    }

    record RulerHeading(String id, String name, Optional<String> dates, List<Inline> note) implements EntryBlock {
        public RulerHeading {
            note = List.copyOf(note);
        }
    }

    record IssueHeading(String id, String name) implements EntryBlock { }

    /**
     * One type with its specimens.
     *
     * @param id          anchor
     * @param numbers     first and last catalogue number: "12" or "12–18"
     * @param firstLine   denomination, metal, date, weight standard: what of these there is, in order
     * @param sides       obverse, reverse
     * @param references  in order
     * @param specimens   in order
     * @param notes       prose after the rows
     * @param runningHead mint and ruler for the head of the page
     * @param continued   over a page that the entry runs on to, after its numbers: "Drachm (continued)"
     */
    record Entry(String id, String numbers, List<String> firstLine, List<SideText> sides,
                 List<ReferenceText> references, List<Specimen> specimens, List<Prose> notes,
                 String runningHead, String continued) implements EntryBlock {
        public Entry {
            firstLine = List.copyOf(firstLine);
            sides = List.copyOf(sides);
            references = List.copyOf(references);
            specimens = List.copyOf(specimens);
            notes = List.copyOf(notes);
        }
    }

    /** @param label "Obv."; @param legend as cut; @param description follows it */
    record SideText(String label, Optional<String> legend, List<Inline> description) {
        public SideText {
            description = List.copyOf(description);
        }
    }

    /** @param sign abbreviation of the work; @param relation words printed before it: empty for the plain case "same type", and after another of the same relation */
    record ReferenceText(String relation, String sign, String number) { }
}
