package exergue.typeset;

import exergue.model.Inline;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Soft hyphens in the words of running prose. What is no plain word of the book's language stays whole: words in
 * italics, which are mostly of another language; links and signs of works; words with a figure, a hyphen or a capital in
 * them; short ones.
 */
final class Hyphens {

    private static final char SOFT = '\u00AD';

    private static final Pattern WORD = Pattern.compile(
            "(?<![\\p{L}\\p{M}\\p{N}\\-\\u2010])\\p{IsLatin}\\p{Ll}{5,}(?![\\p{L}\\p{M}\\p{N}\\-\\u2010])");

    private final Patterns patterns;
    private final Map<String, String> divided = new HashMap<>();

    private Hyphens(Patterns patterns) {
        this.patterns = patterns;
    }

    /** @param language its code; of one whose patterns are not known no word is divided */
    static Hyphens of(String language) {
        return new Hyphens(Patterns.of(language));
    }

    /** Of one paragraph, whose last line shall not be the rest of a word: its last word stays whole. */
    List<Inline> in(List<Inline> runs) {
        List<Inline> hyphened = hyphened(runs);
        int last = hyphened.size() - 1;
        while (last >= 0 && hyphened.get(last) instanceof Inline.Footnote) {
            last--;
        }
        if (last >= 0 && hyphened.get(last) instanceof Inline.Words words) {
            int word = words.text().stripTrailing().lastIndexOf(' ') + 1;
            hyphened.set(last, new Inline.Words(words.text().substring(0, word)
                    + words.text().substring(word).replace(String.valueOf(SOFT), "")));
        }
        return hyphened;
    }

    private List<Inline> hyphened(List<Inline> runs) {
        List<Inline> hyphened = new ArrayList<>();
        for (Inline run : runs) {
            if (run instanceof Inline.Words words) {
                hyphened.add(new Inline.Words(hyphened(words.text())));
            } else if (run instanceof Inline.Strong strong) {
                hyphened.add(new Inline.Strong(hyphened(strong.runs())));
            } else if (run instanceof Inline.Footnote note) {
                hyphened.add(new Inline.Footnote(note.number(), in(note.runs()), note.place()));
            } else {
                hyphened.add(run);
            }
        }
        return hyphened;
    }

    private String hyphened(String text) {
        return WORD.matcher(text).replaceAll(word -> Matcher.quoteReplacement(
                divided.computeIfAbsent(word.group(), whole -> patterns.divided(whole, SOFT))));
    }
}
