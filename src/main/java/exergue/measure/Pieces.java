package exergue.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Cuts the text of a reading into digits, words and signs. */
final class Pieces {

    private static final String MARKS = "[.,]?[0-9]+(?:[.,:][0-9]+)*";
    private static final String LETTERS = "\\p{L}+(?:[.']+\\p{L}+)*\\.?";
    private static final String POWERS = "(?i:g/cm[3³]|[cm]m[2²])(?![\\p{L}\\p{Nd}²³])";
    private static final Pattern NEXT = Pattern.compile("(?<digits>" + MARKS + ")|(?<word>№|" + POWERS + "|" + LETTERS
            + "|'{1,3}|[\"°‴])|(?<sign>[×/<>~?-])|(?<space> +)");
    /** A letter that looks like a figure and stands among figures: 3.O7, l8. */
    private static final Pattern MIXED = Pattern.compile("(?<![\\p{L}\\p{N}.,:])[0-9OolI.,:]*[0-9OolI](?![\\p{L}\\p{N}])");
    private static final Pattern OTHER_DIGITS = Pattern.compile("(?<![cm]m)[\\p{Nd}²³¹⁰⁴-⁹₀-₉&&[^0-9]]+");
    private static final String FRACTIONS = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅐⅑⅒";
    private static final int[] PARTS = {12, 13, 23, 14, 34, 15, 25, 35, 45, 16, 56, 18, 38, 58, 78, 17, 19, 110};
    private static final Map<String, String> WORD_SIGNS =
            Map.of("x", "×", "х", "×", "by", "×", "to", "-", "c", "~", "ca", "~", "circa", "~", "about", "~",
                    "approx", "~", "approximately", "~");

    private Pieces() { }

    static Step<List<Piece>> of(Task task) {
        String plain = task.marks().plain();
        Matcher other = OTHER_DIGITS.matcher(plain);
        if (!isAscii(plain) && other.find()) {
            return otherDigits(task, other);
        }
        Matcher mixed = MIXED.matcher(plain);
        while (likeFigures(plain) && mixed.find()) {
            if (mixed.group().matches(".*[0-9].*") && mixed.group().matches(".*[OolI].*")) {
                return lettersForFigures(task, mixed);
            }
        }
        return cut(task, plain);
    }

    private static boolean isAscii(String plain) {
        return plain.chars().allMatch(c -> c < 128);
    }

    private static boolean likeFigures(String plain) {
        return plain.indexOf('O') >= 0 || plain.indexOf('o') >= 0 || plain.indexOf('l') >= 0 || plain.indexOf('I') >= 0;
    }

    private static Step<List<Piece>> cut(Task task, String plain) {
        List<Piece> pieces = new ArrayList<>();
        Matcher next = NEXT.matcher(plain);
        int i = 0;
        while (i < plain.length()) {
            char first = plain.charAt(i);
            int fraction = FRACTIONS.indexOf(first);
            if (fraction >= 0) {
                int parts = PARTS[fraction];
                pieces.add(parts > 100 ? new Piece.Glyph(1, 10, i, i + 1)
                        : new Piece.Glyph(parts / 10, parts % 10, i, i + 1));
                i++;
            } else if (TextMarks.arrow(first) >= 0) {
                pieces.add(new Piece.Arrow(TextMarks.arrow(first), i, i + 1));
                i++;
            } else if (next.region(i, plain.length()).lookingAt()) {
                add(pieces, next);
                i = next.end();
            } else {
                return task.stop(ReadingFault.UNKNOWN_SIGN, i, i + 1,
                        "The sign " + task.marks().quoted(i, i + 1) + " has no meaning in " + task.kind().one() + ".",
                        first == '(' ? "Leave only the figure and its unit; what the brackets say belongs into “note”, damage under “damage”."
                                : "Take it out. If the record itself cannot be read, write \"illegible: why\", within quotation marks.");
            }
        }
        return Step.done(pieces);
    }

    private static void add(List<Piece> pieces, Matcher next) {
        int from = next.start();
        int to = next.end();
        if (next.group("digits") != null) {
            pieces.add(new Piece.Digits(next.group(), from, to));
        } else if (next.group("sign") != null) {
            pieces.add(new Piece.Sign(next.group().charAt(0), from, to));
        } else if (next.group("word") != null) {
            String word = switch (next.group()) {
                case "''" -> "\"";
                case "'''" -> "‴";
                default -> next.group().replace(".", "").toLowerCase(Locale.ROOT);
            };
            String sign = WORD_SIGNS.get(word);
            pieces.add(sign == null ? new Piece.Word(word, from, to) : new Piece.Sign(sign.charAt(0), from, to));
        }
    }

    private static Step<List<Piece>> otherDigits(Task task, Matcher other) {
        StringBuilder usual = new StringBuilder();
        other.group().chars().forEach(digit -> usual.append(Character.getType(digit) == Character.DECIMAL_DIGIT_NUMBER
                ? String.valueOf(Character.digit(digit, 10)) : "…"));
        String offer = usual.indexOf("…") < 0 ? ": " + usual : "";
        return task.stop(ReadingFault.OTHER_DIGITS, other.start(), other.end(),
                "The digits " + task.marks().quoted(other.start(), other.end())
                        + " are not the plain figures 0 to 9, though they may look like them.",
                "Type them again with the figures 0 to 9" + offer + ".");
    }

    private static Step<List<Piece>> lettersForFigures(Task task, Matcher mixed) {
        String meant = mixed.group().replaceAll("[Oo]", "0").replaceAll("[lI]", "1");
        return task.stop(ReadingFault.LETTER_FOR_FIGURE, mixed.start(), mixed.end(),
                task.marks().quoted(mixed.start(), mixed.end()) + " has a letter where a figure should stand: the "
                        + "letter O for nought, or l or I for one.",
                "Write " + meant + " if that is what the record says.");
    }
}
