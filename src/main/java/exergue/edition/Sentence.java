package exergue.edition;

import java.util.Locale;

/** A capital at the beginning, one full stop at the end. */
final class Sentence {

    private Sentence() { }

    /** These words as a sentence; nothing stays nothing. */
    static String of(String words) {
        return words.isBlank() ? "" : capital(words) + stop(words);
    }

    static String capital(String words) {
        if (words.isEmpty()) {
            return words;
        }
        int first = words.offsetByCodePoints(0, 1);
        return words.substring(0, first).toUpperCase(Locale.ROOT) + words.substring(first);
    }

    /** What is still to be set after these words: nothing where an abbreviation or the sentence itself has closed them. */
    static String stop(String words) {
        return words.matches("(?s).*[.!?…]\u202F?[”’»›“‘\"']?") ? "" : ".";
    }
}
