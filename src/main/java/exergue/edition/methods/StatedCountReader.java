package exergue.edition.methods;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the counts that a text states: a number in words or figures straight before a noun that is counted. Other ways
 * of stating a count are not recognised.
 */
public final class StatedCountReader {

    private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.!?])\\s+(?=\\p{Lu})");

    private final List<String> numbers;
    private final int first;
    private final Map<String, String> nouns;
    private final Pattern stated;

    /**
     * @param first     the number of the first word
     * @param numbers   words for it and those that follow it
     * @param thousands the marks that may stand between thousands, as in a character class
     * @param nouns     counters by the regular expression of their noun in small letters, in the order they are tried
     */
    public StatedCountReader(int first, List<String> numbers, String thousands, Map<String, String> nouns) {
        this.first = first;
        this.numbers = List.copyOf(numbers);
        this.nouns = nouns;
        this.stated = Pattern.compile("(?<![\\p{L}\\p{N}.,-])(\\d{1,3}(?:[" + thousands + "]\\d{3})+|\\d{1,7}|"
                + String.join("|", numbers) + ")[\\s\\u00A0\\u202F]+(" + String.join("|", nouns.keySet()) + ")(?!\\p{L})",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    public List<StatedCount> in(String text) {
        List<StatedCount> found = new ArrayList<>();
        for (String sentence : SENTENCE_END.split(text)) {
            Matcher matcher = stated.matcher(sentence);
            while (matcher.find()) {
                found.add(new StatedCount(sentence, number(matcher.group(1)), counter(matcher.group(2)), matcher.group()));
            }
        }
        return found;
    }

    private int number(String words) {
        int inWords = numbers.indexOf(words.toLowerCase(Locale.ROOT));
        return inWords >= 0 ? first + inWords : Integer.parseInt(words.replaceAll("\\D", ""));
    }

    private String counter(String noun) {
        String small = noun.toLowerCase(Locale.ROOT);
        return nouns.entrySet().stream().filter(entry -> small.matches(entry.getKey())).map(Map.Entry::getValue)
                .findFirst().orElseThrow();
    }
}
