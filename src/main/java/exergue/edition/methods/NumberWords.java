package exergue.edition.methods;

import java.util.List;
import java.util.Locale;

/**
 * Counts in running text: small ones in words, others in figures, with a mark between thousands from five digits on.
 *
 * @param words     for two, three, four and so on
 * @param thousands between groups of three digits
 */
public record NumberWords(List<String> words, String thousands) {

    private static final int FIRST = 2;
    private static final int GROUPED = 10_000;

    public NumberWords {
        words = List.copyOf(words);
    }

    /** Of two or more; one and none agree with their noun in most languages. */
    public String of(int count) {
        if (count >= FIRST && count < FIRST + words.size()) {
            return words.get(count - FIRST);
        }
        return count < GROUPED ? String.valueOf(count)
                : String.format(Locale.ROOT, "%,d", count).replace(",", thousands);
    }

    public boolean inWords(int count) {
        return count < FIRST + words.size();
    }
}
