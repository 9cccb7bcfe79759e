package exergue.edition.methods.italian;

import exergue.edition.methods.NumberWords;
import java.util.List;

/** Numbers, lists and the verb that agrees. */
final class Grammar {

    /** Between a figure and its unit in running text. */
    static final String NO_BREAK = "\u00A0";

    static final NumberWords NUMBERS = new NumberWords(List.of("due", "tre", "quattro", "cinque", "sei", "sette", "otto",
            "nove", "dieci"), ".");

    private Grammar() { }

    /** "a, b e c" */
    static String list(List<String> members) {
        if (members.size() < 2) {
            return String.join("", members);
        }
        int last = members.size() - 1;
        return String.join(", ", members.subList(0, last)) + " e " + members.get(last);
    }

    /** "d’oro", "di rame" */
    static String of(String word) {
        return word.matches("[aeiou].*") ? "d’" + word : "di " + word;
    }

    static String is(int n) {
        return n == 1 ? "è" : "sono";
    }

    /** The ending of a masculine participle or adjective. */
    static String ending(int n) {
        return n == 1 ? "o" : "i";
    }
}
