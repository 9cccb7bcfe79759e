package exergue.edition.methods.german;

import exergue.edition.methods.NumberWords;
import java.util.List;

/** Numbers, lists and the verb that agrees. */
final class Grammar {

    /** Between a figure and its unit in running text. */
    static final String NO_BREAK = "\u00A0";

    static final NumberWords NUMBERS = new NumberWords(List.of("zwei", "drei", "vier", "fünf", "sechs", "sieben", "acht",
            "neun", "zehn", "elf", "zwölf"), "\u202F");

    private Grammar() { }

    /** "a, b und c" */
    static String list(List<String> members) {
        if (members.size() < 2) {
            return String.join("", members);
        }
        int last = members.size() - 1;
        return String.join(", ", members.subList(0, last)) + " und " + members.get(last);
    }

    static String is(int n) {
        return n == 1 ? "ist" : "sind";
    }

    static String was(int n) {
        return n == 1 ? "wurde" : "wurden";
    }
}
