package exergue.edition.methods.english;

import exergue.edition.methods.StatedCount;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Counts that a text states: a number from one to twenty in words, or any in figures, straight before "coins",
 * "weights", "diameters" or "die-axes". Other ways of stating a count are not recognised.
 */
final class StatedCounts {

    private static final List<String> NUMBERS = List.of("one", "two", "three", "four", "five", "six", "seven", "eight",
            "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen",
            "nineteen", "twenty");

    private static final Pattern STATED = Pattern.compile("(?<![\\p{L}\\p{N}.-])(\\d{1,3}(?:,\\d{3})+|\\d{1,7}|"
            + String.join("|", NUMBERS) + ")[\\s\\u00A0\\u202F]+(coins?|specimens?|weights?|diameters?|(?:die-)?axes|"
            + "(?:die-)?axis)(?!\\p{L})", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.!?])\\s+(?=\\p{Lu})");

    private StatedCounts() { }

    static List<StatedCount> in(String text) {
        List<StatedCount> found = new ArrayList<>();
        for (String sentence : SENTENCE_END.split(text)) {
            Matcher matcher = STATED.matcher(sentence);
            while (matcher.find()) {
                found.add(new StatedCount(sentence, number(matcher.group(1)), noun(matcher.group(2)), matcher.group()));
            }
        }
        return found;
    }

    private static int number(String words) {
        int inWords = NUMBERS.indexOf(words.toLowerCase(Locale.ROOT));
        return inWords >= 0 ? inWords + 1 : Integer.parseInt(words.replace(",", ""));
    }

    private static String noun(String written) {
        String noun = written.toLowerCase(Locale.ROOT);
        if (noun.startsWith("coin") || noun.startsWith("specimen")) {
            return "coins";
        }
        return noun.startsWith("weight") ? "weights" : noun.startsWith("diameter") ? "diameters" : "die-axes";
    }
}
