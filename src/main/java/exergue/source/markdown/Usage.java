package exergue.source.markdown;

import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.finding.Severity;
import exergue.model.HouseRules.Wording;
import exergue.model.Written;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Words, dashes and spaces of a text that is printed, as the house wants them; each with the change that mends it. */
public final class Usage {

    static final Code OTHER_WORD = new Code("other-word-wanted", Severity.WARNING, "A word stands for which the house has another",
            "One thing should have one name throughout a book; else a reader asks whether two things are meant, and a search finds half.",
            "obverse: {description: Planchet cracked}", "obverse: {description: Flan cracked}");
    static final Code HYPHEN_FOR_DASH = new Code("hyphen-for-dash", Severity.WARNING, "A hyphen stands where a dash is meant",
            "A hyphen between spaces looks like a slip in print. A dash with spaces, or two hyphens, is printed as a dash.",
            "note: Two cracks - the die was near its end.", "note: Two cracks – the die was near its end.");
    static final Code STRAY_SPACE = new Code("stray-space", Severity.WARNING, "A space stands where none belongs",
            "Two spaces running, or one before a comma or full stop, come from retyping. They make the same text differ from entry to "
                    + "entry, so that a search or an index takes it for another.",
            "words: Tessimond  cabinet , 1868", "words: Tessimond cabinet, 1868");

    private static final Pattern HYPHEN = Pattern.compile("(?<=[^\\s-] )-(?= [^\\s-])");
    private static final Pattern SPACES = Pattern.compile("(?<=\\S) {2,}(?=\\S)| +(?=[,.](?:\\s|$)(?! *\\.))(?<!\\. {1,9})");

    private final Manuscript manuscript;
    private final String text;
    private final int index;

    private Usage(Manuscript manuscript, String text, int index) {
        this.manuscript = manuscript;
        this.text = text;
        this.index = index;
    }

    static List<Code> codes() {
        return List.of(OTHER_WORD, HYPHEN_FOR_DASH, STRAY_SPACE);
    }

    /**
     * Reports what is not as the house wants it.
     *
     * @param text  a part of the manuscript in which every sign is printed
     * @param index where it begins there, as String counts
     */
    public static void look(Manuscript manuscript, String text, int index) {
        Usage usage = new Usage(manuscript, text, index);
        if (!manuscript.house().wordings().isEmpty()) {
            manuscript.house().wordings().forEach(usage::words);
        }
        if (text.contains(" - ")) {
            HYPHEN.matcher(text).results().forEach(found -> usage.report(HYPHEN_FOR_DASH, found.start(), "-", "–",
                    "A hyphen stands here between two spaces, where a dash is meant."));
        }
        if (text.contains("  ") || text.contains(" ,") || text.contains(" .")) {
            SPACES.matcher(text).results().forEach(found -> usage.spaces(found.start(), found.group()));
        }
    }

    private void spaces(int at, String spaces) {
        boolean beforeMark = ",.".indexOf(text.charAt(at + spaces.length())) >= 0;
        report(STRAY_SPACE, at, spaces, beforeMark ? "" : " ", beforeMark
                ? "A space stands here before “" + text.charAt(at + spaces.length()) + "”." : "Here stand " + spaces.length() + " spaces running.");
    }

    private void words(Wording wording) {
        for (Written<String> unwanted : wording.not()) {
            Matcher found = Pattern.compile("(?<![\\p{L}\\p{M}\\p{N}])" + Pattern.quote(unwanted.value()) + "(?![\\p{L}\\p{M}\\p{N}])",
                    Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE).matcher(text);
            while (found.find()) {
                String wanted = asBegun(found.group(), wording.write().value());
                String what = "The house does not write “" + found.group() + "”.";
                if (standsBeside(wording.write().value(), found)) {
                    manuscript.report(Finding.of(OTHER_WORD, manuscript.at(index + found.start(), found.group().length()), manuscript.path(), what,
                            "“" + wording.write() + "” stands beside it: leave one of the two, or write another word."));
                } else {
                    report(OTHER_WORD, found.start(), found.group(), wanted, what);
                }
            }
        }
    }

    /** Whether the word of the house is the one before or after, as in “a blank flan”: put in, it would stand twice. */
    private boolean standsBeside(String word, Matcher found) {
        return text.regionMatches(true, found.end() + 1, word, 0, word.length())
                || text.regionMatches(true, found.start() - 1 - word.length(), word, 0, word.length());
    }

    /** With a capital where the other has one. */
    private static String asBegun(String other, String word) {
        int first = word.codePointAt(0);
        return Character.isUpperCase(other.codePointAt(0))
                ? new StringBuilder().appendCodePoint(Character.toUpperCase(first)).append(word.substring(Character.charCount(first))).toString()
                : word;
    }

    private void report(Code code, int at, String was, String wanted, String what) {
        Place place = manuscript.at(index + at, was.length());
        String remedy = wanted.isBlank() ? (wanted.isEmpty() ? "Take it out." : "Write one.") : "Write “" + wanted + "”.";
        Finding finding = Finding.of(code, place, manuscript.path(), what, remedy);
        boolean exact = place.length() == was.codePointCount(0, was.length());
        manuscript.report(exact ? finding.withEditAt(place, was, wanted) : finding);
    }
}
