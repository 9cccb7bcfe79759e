package exergue.edition.methods.english;

import exergue.edition.methods.NumberWords;
import exergue.edition.methods.Tally;
import exergue.measure.Kind;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Number and plural, lists, articles: what English asks of every sentence. */
public final class Grammar {

    /** Between a figure and its unit in running text. */
    static final String NO_BREAK = "\u00A0";

    private static final NumberWords NUMBERS = new NumberWords(List.of("two", "three", "four", "five", "six", "seven",
            "eight", "nine", "ten"), ",");

    private static final Map<String, String> PLURALS = Map.of("die-axis", "die-axes", "thickness", "thicknesses",
            "density", "densities", "entry", "entries");

    private Grammar() { }

    /** Words up to ten, figures above. */
    public static String number(int n) {
        return n == 0 ? "no" : n == 1 ? "one" : NUMBERS.of(n);
    }

    /** "six", "four"; "12", "6" where one is too large for words. */
    static List<String> series(List<Integer> counts) {
        return NUMBERS.series(counts, Grammar::number);
    }

    /** "broken: three", "pierced: one" */
    static <T> List<String> tallied(List<Tally.Count<T>> counts, Function<T, String> name) {
        return NUMBERS.tallied(counts, name, ": ", Grammar::number);
    }

    /** "one coin", "12 coins" */
    static String count(int n, String noun) {
        return number(n) + " " + agree(n, noun);
    }

    /** "coin", "coins" */
    public static String agree(long n, String noun) {
        return n == 1 ? noun : plural(noun);
    }

    static String was(int n) {
        return n == 1 ? "was" : "were";
    }

    static String is(int n) {
        return n == 1 ? "is" : "are";
    }

    static String noun(Kind kind) {
        return switch (kind) {
            case WEIGHT -> "weight";
            case DIAMETER -> "diameter";
            case AXIS -> "die-axis";
            case THICKNESS -> "thickness";
            case DENSITY -> "density";
            case SURFACE -> "surface";
        };
    }

    static String plural(String noun) {
        int lastWord = noun.lastIndexOf(' ') + 1;
        String last = noun.substring(lastWord);
        return noun.substring(0, lastWord) + PLURALS.getOrDefault(last, last + "s");
    }

    /** "a, b and c" */
    static String list(List<String> members) {
        if (members.size() < 2) {
            return String.join("", members);
        }
        int last = members.size() - 1;
        return String.join(", ", members.subList(0, last)) + " and " + members.get(last);
    }

    /**
     * "an electronic balance" for "electronic balance"; words that have an article, a possessive or a capital stay, and
     * so do plurals such as "digital callipers with plastic jaws".
     */
    static String withArticle(String words) {
        String head = words.split("[,(;]| with | of | by ", 2)[0].strip();
        boolean plural = head.endsWith("s") && !head.endsWith("ss");
        boolean determined = words.matches("(?:an?|the|one|two|three|several|his|her|their)\\b.*|[^\\p{Ll}].*");
        if (plural || determined) {
            return words;
        }
        return (words.matches("[aeiou].*") ? "an " : "a ") + words;
    }
}
