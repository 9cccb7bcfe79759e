package exergue.dating;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** First, second, third: of centuries. */
final class Ordinals {

    /** Those of one word; a hyphen would be read as that of a span. */
    private static final List<String> WORDS = List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh",
            "eighth", "ninth", "tenth", "eleventh", "twelfth", "thirteenth", "fourteenth", "fifteenth", "sixteenth",
            "seventeenth", "eighteenth", "nineteenth", "twentieth");

    private static final List<Map.Entry<Integer, String>> ROMAN = List.of(Map.entry(50, "L"), Map.entry(40, "XL"),
            Map.entry(10, "X"), Map.entry(9, "IX"), Map.entry(5, "V"), Map.entry(4, "IV"), Map.entry(1, "I"));

    private static final int LAST_ROMAN = 39;

    private Ordinals() { }

    static String word(int number) {
        return number <= WORDS.size() ? WORDS.get(number - 1) : figure(number);
    }

    static String figure(int number) {
        int tens = number % 100;
        String ending = tens > 10 && tens < 14 ? "th" : switch (number % 10) {
            case 1 -> "st";
            case 2 -> "nd";
            case 3 -> "rd";
            default -> "th";
        };
        return number + ending;
    }

    static String roman(int number) {
        StringBuilder roman = new StringBuilder();
        int left = number;
        for (Map.Entry<Integer, String> sign : ROMAN) {
            while (left >= sign.getKey()) {
                roman.append(sign.getValue());
                left -= sign.getKey();
            }
        }
        return roman.toString();
    }

    /** "second", "2nd", "2.", "ii" or "iie", in small letters; empty for anything else. */
    static Optional<Integer> number(String text) {
        if (WORDS.contains(text)) {
            return Optional.of(WORDS.indexOf(text) + 1);
        }
        String digits = text.replaceFirst("(st|nd|rd|th|er|e|\\.)$", "");
        for (int century = 1; century <= LAST_ROMAN; century++) {
            if (digits.equals(roman(century).toLowerCase(Locale.ROOT))) {
                return Optional.of(century);
            }
        }
        return digits.matches("[1-9][0-9]?") ? Optional.of(Integer.valueOf(digits)) : Optional.empty();
    }
}
