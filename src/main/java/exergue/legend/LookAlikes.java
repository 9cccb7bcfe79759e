package exergue.legend;

import java.lang.Character.UnicodeScript;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Words of a legend in which a letter comes from the other alphabet: a Latin P among Greek letters looks right and is not found. */
public final class LookAlikes {

    private static final String LATIN = "ABEZHIKMNOPTYXCo";
    private static final String GREEK = "ΑΒΕΖΗΙΚΜΝΟΡΤΥΧϹο";
    /** Brackets, dots and ties belong to the word they stand in. */
    private static final Pattern WORD = Pattern.compile("[^\\s|/·•]+");

    private LookAlikes() { }

    /** One remark for each such word, at the first letter that is out of place. */
    public static List<Remark> in(String legend) {
        List<Remark> remarks = new ArrayList<>();
        boolean greekOnTheWhole = count(legend, UnicodeScript.GREEK) >= count(legend, UnicodeScript.LATIN);
        Matcher words = WORD.matcher(legend);
        while (words.find()) {
            int greek = count(words.group(), UnicodeScript.GREEK);
            int latin = count(words.group(), UnicodeScript.LATIN);
            if (greek > 0 && latin > 0) {
                boolean greekWord = greek == latin ? greekOnTheWhole : greek > latin;
                stranger(legend, words, greekWord, remarks);
            }
        }
        return remarks;
    }

    /** Silent where a stranger is no look-alike: then the mixture can be seen, and may be meant. */
    private static void stranger(String legend, Matcher word, boolean greekWord, List<Remark> remarks) {
        String strangers = greekWord ? LATIN : GREEK;
        String meant = greekWord ? GREEK : LATIN;
        UnicodeScript foreign = greekWord ? UnicodeScript.LATIN : UnicodeScript.GREEK;
        int first = -1;
        Set<String> letters = new LinkedHashSet<>();
        Set<String> replacements = new LinkedHashSet<>();
        for (int i = word.start(); i < word.end(); i++) {
            char letter = legend.charAt(i);
            if (UnicodeScript.of(letter) == foreign) {
                int alike = strangers.indexOf(letter);
                if (alike < 0) {
                    return;
                }
                letters.add("“" + letter + "”");
                replacements.add("“" + meant.charAt(alike) + "”");
                first = first < 0 ? i : first;
            }
        }
        String own = greekWord ? "Greek" : "Latin";
        String other = greekWord ? "Latin" : "Greek";
        String replacement = String.valueOf(meant.charAt(strangers.indexOf(legend.charAt(first))));
        remarks.add(new Remark(LegendFault.MIXED_ALPHABETS, legend.codePointCount(0, first), 1, "The word “" + word.group() + "” is "
                + own + ", but its " + listed(letters) + (letters.size() == 1 ? " is the " + other + " letter that looks like it."
                        : " are the " + other + " letters that look like them."),
                "Type the " + own + " " + listed(replacements) + " in " + (letters.size() == 1 ? "its place." : "their places."),
                isCertain(word.group(), foreign, meant) ? Optional.of(replacement) : Optional.empty()));
    }

    private static String listed(Set<String> letters) {
        List<String> all = List.copyOf(letters);
        return all.size() == 1 ? all.get(0) : String.join(", ", all.subList(0, all.size() - 1)) + " and " + all.get(all.size() - 1);
    }

    /** A letter as its like of the Greek alphabet, where it has one; both small. */
    static String asGreek(String small) {
        int alike = LATIN.indexOf(small.toUpperCase(Locale.ROOT));
        return small.isEmpty() || alike < 0 ? small
                : String.valueOf(GREEK.charAt(alike)).toLowerCase(Locale.ROOT).replace('ϲ', 'σ');
    }

    /** Two letters of the word, or more, that the other alphabet has not even in look: then it cannot be a word of that one. */
    private static boolean isCertain(String word, UnicodeScript foreign, String alike) {
        return word.codePoints().filter(point -> Character.isLetter(point) && UnicodeScript.of(point) != foreign
                && alike.indexOf(point) < 0).count() > 1;
    }

    private static int count(String text, UnicodeScript script) {
        return (int) text.codePoints().filter(point -> Character.isLetter(point) && UnicodeScript.of(point) == script).count();
    }
}
