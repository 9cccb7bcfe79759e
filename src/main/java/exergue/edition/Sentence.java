package exergue.edition;

import exergue.edition.methods.Passage;
import java.util.regex.Pattern;

/** A capital at the beginning, one full stop at the end. */
final class Sentence {

    private static final Pattern CLOSED = Pattern.compile("[.!?…]\u202F?[”’»›“‘\"']?\\z");

    private Sentence() { }

    /** These words as a sentence; nothing stays nothing. */
    static String of(String words) {
        return words.isBlank() ? "" : Passage.capital(words) + stop(words);
    }

    /** What is still to be set after these words: nothing where an abbreviation or the sentence itself has closed them. */
    static String stop(String words) {
        return CLOSED.matcher(words).find() ? "" : ".";
    }
}
