package exergue.edition.methods.french;

import exergue.edition.methods.NumberWords;
import java.util.List;

/** Elision, lists, and the spaces of French punctuation. */
final class Grammar {

    /** Between a figure and its unit in running text. */
    static final String NO_BREAK = "\u00A0";

    private static final String NARROW = "\u202F";

    static final String COLON = NO_BREAK + ": ";
    static final String SEMICOLON = NARROW + "; ";

    static final NumberWords NUMBERS = new NumberWords(List.of("deux", "trois", "quatre", "cinq", "six", "sept", "huit",
            "neuf", "dix"), NARROW);

    private Grammar() { }

    /** "a, b et c" */
    static String list(List<String> members) {
        if (members.size() < 2) {
            return String.join("", members);
        }
        int last = members.size() - 1;
        return String.join(", ", members.subList(0, last)) + " et " + members.get(last);
    }

    static boolean isElided(String word) {
        return word.matches("[aeiouyàâéèêîôûœ].*");
    }

    /** "d’une", "de deux" */
    static String of(String words) {
        return isElided(words) ? "d’" + words : "de " + words;
    }

    static String is(int n) {
        return n == 1 ? "est" : "sont";
    }
}
