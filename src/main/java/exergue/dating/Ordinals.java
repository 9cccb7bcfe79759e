package exergue.dating;

import java.util.List;
import java.util.Optional;

/** First, second, third: of centuries. */
final class Ordinals {

    private static final List<String> WORDS = List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh",
            "eighth", "ninth", "tenth", "eleventh", "twelfth", "thirteenth", "fourteenth", "fifteenth", "sixteenth",
            "seventeenth", "eighteenth", "nineteenth", "twentieth", "twenty-first");

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

    /** "second", "2nd" or "2"; empty for anything else. */
    static Optional<Integer> number(String text) {
        if (WORDS.contains(text)) {
            return Optional.of(WORDS.indexOf(text) + 1);
        }
        String digits = text.replaceFirst("(st|nd|rd|th)$", "");
        return digits.matches("[1-9][0-9]?") ? Optional.of(Integer.valueOf(digits)) : Optional.empty();
    }
}
