package exergue.cite;

import exergue.model.Inline;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Italic and bold on their way through the library, as characters of Unicode's private use area, so that what is words can
 * never be taken for a mark. Italic within italic is upright again, as in a title within a title.
 */
final class Markers {

    static final String ITALIC = "\uE000";
    static final String ITALIC_END = "\uE001";
    static final String BOLD = "\uE002";
    static final String BOLD_END = "\uE003";

    private static final Pattern OWN = Pattern.compile("[\uE000-\uE003]");
    private static final Pattern TAG = Pattern.compile("</?(?:b|sup|sub|sc|span)(?:\\s[^<>]{0,100})?>");

    private Markers() { }

    /** The markup that CSL-JSON has in titles: italic is kept, the rest is let go. */
    static String ofMarkup(String text) {
        String words = OWN.matcher(text).replaceAll("");
        return TAG.matcher(words).replaceAll("").replace("<i>", ITALIC).replace("</i>", ITALIC_END);
    }

    /** Marked words to runs. A mark that is not closed ends with the words. */
    static List<Inline> runs(String marked) {
        List<Inline> runs = new ArrayList<>();
        StringBuilder words = new StringBuilder();
        int italic = 0;
        int bold = 0;
        for (char c : marked.toCharArray()) {
            if (c < '\uE000' || c > '\uE003') {
                words.append(c);
                continue;
            }
            add(words, italic % 2 == 1, bold > 0, runs);
            switch (c) {
                case '\uE000' -> italic++;
                case '\uE001' -> italic = Math.max(0, italic - 1);
                case '\uE002' -> bold++;
                default -> bold = Math.max(0, bold - 1);
            }
        }
        add(words, italic % 2 == 1, bold > 0, runs);
        return List.copyOf(runs);
    }

    private static void add(StringBuilder words, boolean italic, boolean bold, List<Inline> runs) {
        if (words.length() == 0) {
            return;
        }
        Inline run = new Inline.Words(words.toString());
        run = italic ? new Inline.Emphasis(List.of(run)) : run;
        runs.add(bold ? new Inline.Strong(List.of(run)) : run);
        words.setLength(0);
    }
}
