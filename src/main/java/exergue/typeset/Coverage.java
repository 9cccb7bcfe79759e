package exergue.typeset;

import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Place;
import exergue.model.Written;
import exergue.typeset.Faces.Style;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Whether the book's face has every letter and mark that will be printed. */
public final class Coverage {

    private static final int FIRST_PRINTED = 0x20;
    private static final Pattern WORD = Pattern.compile("\\S+");

    private Coverage() { }

    /**
     * One finding for each word with letters that the face lacks in any of its styles and that no earlier word of the
     * text has; the same text may be roman in an entry and italic in a running head.
     */
    public static Findings missing(List<Written<String>> texts) {
        List<Finding> findings = new ArrayList<>();
        for (Written<String> text : texts) {
            Matcher words = WORD.matcher(text.value());
            Set<String> told = new HashSet<>();
            while (words.find()) {
                String lacking = lacking(words.group(), told);
                if (!lacking.isEmpty()) {
                    findings.add(finding(text, words.start(), words.group(), lacking));
                }
            }
        }
        return Findings.of(findings);
    }

    /** The letters of a word that the face lacks and that have not been told of yet, each once. */
    private static String lacking(String word, Set<String> told) {
        StringBuilder lacking = new StringBuilder();
        word.codePoints().filter(letter -> letter >= FIRST_PRINTED && !printable(letter)).mapToObj(Character::toString)
                .filter(told::add).forEach(lacking::append);
        return lacking.toString();
    }

    private static boolean printable(int letter) {
        for (Style style : Style.values()) {
            if (!Faces.has(style, letter)) {
                return false;
            }
        }
        return true;
    }

    private static Finding finding(Written<String> text, int at, String word, String lacking) {
        int first = lacking.codePointAt(0);
        boolean one = lacking.codePointCount(0, lacking.length()) == 1;
        int from = one ? at + word.indexOf(Character.toString(first)) : at;
        int offset = text.value().codePointCount(0, from);
        int length = one ? 1 : word.codePointCount(0, word.length());
        Place place = text.value().contains("\n") || text.place().column() == 0
                ? text.place() : text.place().within(offset, length);
        String what = one ? "The book's face has no “" + lacking + "” (" + name(first) + ")."
                : "The book's face lacks letters of “" + word + "”: " + lacking.codePoints().mapToObj(Character::toString)
                        .map(letter -> "“" + letter + "”").collect(Collectors.joining(", ")) + " (the first is " + name(first) + ").";
        return Finding.of(TypesetCodes.MISSING_LETTER, place, "", what,
                "Write it with letters that " + Faces.FAMILY + " has, or describe " + (one ? "the mark" : "it") + " in words.");
    }

    /** "U+05D0, hebrew letter alef"; Unicode names a Chinese character by its number alone, which says nothing more. */
    private static String name(int letter) {
        String number = String.format(Locale.ROOT, "U+%04X", letter);
        if (Character.isIdeographic(letter)) {
            return number + ", a Chinese character";
        }
        String name = Character.getName(letter);
        return name == null ? number : number + ", " + name.toLowerCase(Locale.ROOT);
    }
}
