package exergue.edition.methods;

import java.util.List;
import java.util.Locale;

/** What the methods statement is made of, in words as printed. */
public sealed interface Passage {

    /** How much there is to read, in sentences. */
    int length();

    /** @param opening first words, set apart for the eye; the first sentence goes on from them; mostly empty */
    record Sentences(String opening, List<String> sentences) implements Passage {

        public Sentences {
            sentences = List.copyOf(sentences);
        }

        @Override
        public int length() {
            return sentences.size();
        }
    }

    /** @param lead words from which each of the items goes on; @param items with their stops */
    record Listing(String lead, List<String> items) implements Passage {

        public Listing {
            items = List.copyOf(items);
        }

        @Override
        public int length() {
            return items.size();
        }
    }

    /** The first column holds words, all others figures. @param caption without a full stop; @param heads one a column, with units */
    record Table(String caption, List<String> heads, List<List<String>> rows) implements Passage {

        public Table {
            heads = List.copyOf(heads);
            rows = List.copyOf(rows);
        }

        @Override
        public int length() {
            return rows.size();
        }
    }

    /** With a capital at its beginning; nothing stays nothing. */
    static String capital(String words) {
        if (words.isEmpty()) {
            return words;
        }
        int first = words.offsetByCodePoints(0, 1);
        return words.substring(0, first).toUpperCase(Locale.ROOT) + words.substring(first);
    }

    /** These sentences, or no passage if there are none. */
    static List<Passage> of(List<String> sentences) {
        return sentences.isEmpty() ? List.of() : List.of(new Sentences("", sentences));
    }
}
