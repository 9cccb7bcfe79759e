package exergue.review.words;

import java.util.ArrayList;
import java.util.List;

/** How a change of running text is told: short texts whole, of long ones only what changed, with a few words around it. */
final class TextWords {

    /** Longest text that is quoted whole, in characters. */
    private static final int SHORT = 48;
    /** Words that are kept on either side of a change. */
    private static final int AROUND = 3;
    private static final String CUT = "…";

    private TextWords() { }

    static boolean isShort(String text) {
        return text.length() <= SHORT;
    }

    /** {@code “… head of nymph right, …” → “… head of Artemis right, …”} */
    static String change(String before, String after) {
        if (isShort(before) && isShort(after)) {
            return quoted(before) + " → " + quoted(after);
        }
        List<String> was = words(before);
        List<String> is = words(after);
        int start = 0;
        while (start < was.size() && start < is.size() && was.get(start).equals(is.get(start))) {
            start++;
        }
        int end = 0;
        while (end < was.size() - start && end < is.size() - start
                && was.get(was.size() - 1 - end).equals(is.get(is.size() - 1 - end))) {
            end++;
        }
        return quoted(part(was, start, end)) + " → " + quoted(part(is, start, end));
    }

    private static String part(List<String> words, int start, int end) {
        int from = start <= AROUND ? 0 : start - AROUND;
        int to = end <= AROUND ? words.size() : words.size() - end + AROUND;
        return (from > 0 ? CUT + " " : "") + String.join(" ", words.subList(from, to)) + (to < words.size() ? " " + CUT : "");
    }

    static List<String> words(String text) {
        return List.of(text.split(" "));
    }

    static String quoted(String text) {
        return "“" + text + "”";
    }

    /** The beginning of a text, for one that is new or gone. */
    static String beginning(String text) {
        if (text.length() <= 2 * SHORT) {
            return quoted(text);
        }
        int cut = text.lastIndexOf(' ', 2 * SHORT);
        return quoted(text.substring(0, cut <= 0 ? 2 * SHORT : cut) + " " + CUT);
    }

    /** One sentence for each passage of several texts. @param one what one of them is called: "paragraph" */
    static List<String> changes(String one, List<String> before, List<String> after) {
        List<String> sentences = new ArrayList<>();
        for (Passages passage : Passages.between(before, after)) {
            int both = Math.min(passage.before().size(), passage.after().size());
            for (int i = 0; i < both; i++) {
                sentences.add(one + " " + (passage.to() + i + 1) + ": " + change(passage.before().get(i), passage.after().get(i)));
            }
            for (int i = both; i < passage.before().size(); i++) {
                sentences.add(one + " " + (passage.from() + i + 1) + " taken out: " + beginning(passage.before().get(i)));
            }
            for (int i = both; i < passage.after().size(); i++) {
                sentences.add(one + " " + (passage.to() + i + 1) + " added: " + beginning(passage.after().get(i)));
            }
        }
        return sentences;
    }
}
