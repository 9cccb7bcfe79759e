package exergue.edition.methods;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.IntFunction;

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
        return figures(count);
    }

    /** Counts that stand in one series: all in words, or all in figures where one of them needs figures. */
    public List<String> series(List<Integer> counts, IntFunction<String> word) {
        boolean words = counts.stream().allMatch(this::inWords);
        return counts.stream().map(count -> words ? word.apply(count) : figures(count)).toList();
    }

    /** "corroded: 12", "chipped: 6": things and how many of each, as one series. */
    public <T> List<String> tallied(List<Tally.Count<T>> counts, Function<T, String> name, String colon,
                                    IntFunction<String> word) {
        List<String> numbers = series(counts.stream().map(Tally.Count::times).toList(), word);
        List<String> tallied = new ArrayList<>();
        for (int i = 0; i < numbers.size(); i++) {
            tallied.add(name.apply(counts.get(i).thing()) + colon + numbers.get(i));
        }
        return tallied;
    }

    public String figures(int count) {
        return count < GROUPED ? String.valueOf(count)
                : String.format(Locale.ROOT, "%,d", count).replace(",", thousands);
    }

    public boolean inWords(int count) {
        return count < FIRST + words.size();
    }
}
