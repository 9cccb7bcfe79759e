package exergue.legend;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** The forms of a legend. */
final class Letters {

    static final int DOT_BELOW = 0x323;
    static final int TIE = 0x361;

    private static final String LOST = "– – –";
    private static final Pattern NEITHER_LETTER_NOR_FIGURE = Pattern.compile("[^\\p{L}\\p{N}]");

    private Letters() { }

    /** With the signs of the Leiden system, whatever was typed for them. */
    static String printed(List<Part> parts) {
        StringBuilder text = new StringBuilder();
        for (Part part : parts) {
            if (part instanceof Part.Plain plain) {
                text.append(plain.text());
            } else if (part instanceof Part.Damaged damaged) {
                text.append(marked(damaged.letters(), DOT_BELOW, true));
            } else if (part instanceof Part.Ligature ligature) {
                text.append(marked(ligature.letters(), TIE, false));
            } else if (part instanceof Part.LineEnd end) {
                text.append(end.sign());
            } else if (part instanceof Part.Lost lost) {
                text.append(lost.count().isPresent() ? ".".repeat(lost.count().getAsInt()) : LOST);
            } else if (part instanceof Part.Bracketed bracketed) {
                text.append(bracketed.bracket().open()).append(printed(bracketed.parts())).append(bracketed.bracket().close());
            }
        }
        return Normalizer.normalize(text, Normalizer.Form.NFC);
    }

    private static String marked(String letters, int mark, boolean lastToo) {
        String apart = Normalizer.normalize(letters, Normalizer.Form.NFD);
        StringBuilder text = new StringBuilder();
        int[] points = apart.codePoints().toArray();
        for (int i = 0; i < points.length; i++) {
            text.appendCodePoint(points[i]);
            boolean ends = i + 1 == points.length;
            if ((ends || !isMark(points[i + 1])) && (lastToo || !ends)) {
                text.appendCodePoint(mark);
            }
        }
        return text.toString();
    }

    /**
     * Capital letters and figures in the order of reading, restored, expanded and added ones with them, those cut by
     * mistake without; no brackets, marks, accents, spaces or breaks; lunate sigma as sigma. Equal for legends that say
     * the same.
     */
    static String sortKey(List<Part> parts) {
        return folded(letters(parts, bracket -> bracket != Bracket.SUPERFLUOUS));
    }

    /** Letters, figures and single spaces as they can be seen on the coin; damaged and erased ones with them. */
    static String onCoin(List<Part> parts) {
        return letters(parts, Bracket::isSeen).replaceAll("[^\\p{L}\\p{M}\\p{N} ]", " ").replaceAll(" +", " ").strip();
    }

    private static String letters(List<Part> parts, Predicate<Bracket> wanted) {
        StringBuilder text = new StringBuilder();
        for (Part part : parts) {
            if (part instanceof Part.Plain plain) {
                text.append(plain.text());
            } else if (part instanceof Part.Damaged damaged) {
                text.append(damaged.letters());
            } else if (part instanceof Part.Ligature ligature) {
                text.append(Sign.without(ligature.letters(), DOT_BELOW, TIE));
            } else if (part instanceof Part.LineEnd) {
                text.append(' ');
            } else if (part instanceof Part.Bracketed bracketed && wanted.test(bracketed.bracket())) {
                text.append(letters(bracketed.parts(), wanted));
            }
        }
        return text.toString();
    }

    private static String folded(String text) {
        String plain = Normalizer.normalize(text, Normalizer.Form.NFD).toUpperCase(Locale.ROOT).replace('Ϲ', 'Σ');
        return NEITHER_LETTER_NOR_FIGURE.matcher(plain).replaceAll("");
    }

    static boolean isMark(int point) {
        int type = Character.getType(point);
        return type == Character.NON_SPACING_MARK || type == Character.COMBINING_SPACING_MARK;
    }
}
