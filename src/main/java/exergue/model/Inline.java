package exergue.model;

import java.util.List;

/** A run inside a line of prose. */
public sealed interface Inline {

    record Words(String text) implements Inline { }

    record Emphasis(List<Inline> runs) implements Inline {
        public Emphasis {
            runs = List.copyOf(runs);
        }
    }

    record Strong(List<Inline> runs) implements Inline {
        public Strong {
            runs = List.copyOf(runs);
        }
    }

    /** A link to an address outside the book, printed as its words. */
    record Link(String address, List<Inline> runs) implements Inline {
        public Link {
            runs = List.copyOf(runs);
        }
    }

    /**
     * A reference by an id; printed as the number of the entry, table or figure, or as the sign of a work.
     *
     * @param kind    "coin", "type", "table", "figure", "work"
     * @param locator what follows the sign of a work: "45", "pl. 3"; empty for none
     */
    record CrossReference(String kind, String id, String locator, exergue.finding.Place place) implements Inline {

        public CrossReference(String kind, String id, exergue.finding.Place place) {
            this(kind, id, "", place);
        }
    }

    /**
     * A figure that is to be reckoned from the coins of a group: {@code {mean weight of drachms}}; in the finished book its
     * words stand in its place.
     *
     * @param name of the figure: "mean weight"; @param group its id
     */
    record Figure(String name, String group, exergue.finding.Place place) implements Inline { }

    record LineBreak() implements Inline { }

    /**
     * A call of a footnote, together with the text of the note. It stands in chapters only.
     *
     * @param number in its chapter, from 1; @param runs the note, its paragraphs parted by line breaks; @param place of the call
     */
    record Footnote(int number, List<Inline> runs, exergue.finding.Place place) implements Inline {
        public Footnote {
            runs = List.copyOf(runs);
        }
    }

    /** The words alone, without marks and footnotes. */
    static String plain(List<Inline> runs) {
        StringBuilder words = new StringBuilder();
        for (Inline run : runs) {
            if (run instanceof Words w) {
                words.append(w.text());
            } else if (run instanceof Emphasis e) {
                words.append(plain(e.runs()));
            } else if (run instanceof Strong s) {
                words.append(plain(s.runs()));
            } else if (run instanceof Link l) {
                words.append(plain(l.runs()));
            } else if (run instanceof LineBreak) {
                words.append(' ');
            }
        }
        return words.toString();
    }
}
