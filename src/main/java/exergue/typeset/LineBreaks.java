package exergue.typeset;

import com.openhtmltopdf.extend.FSTextBreaker;
import exergue.edition.HeldTogether;

/**
 * Where a line may end: after a space that does not hold ({@link HeldTogether}); after a dash between letters, or a hyphen
 * before a small one. Never within a figure, a range, a pair of dies, an inventory number or a double name such as
 * Saint-Orlac, nor at an apostrophe.
 */
final class LineBreaks implements FSTextBreaker {

    private static final char SOFT_HYPHEN = '\u00AD';
    private static final char HYPHEN = '\u2010';
    private static final char EN_DASH = '\u2013';
    private static final char EM_DASH = '\u2014';
    private static final char FIGURE_SPACE = '\u2007';

    private String text = "";
    private int at;

    @Override
    public void setText(String words) {
        text = words;
        at = 0;
    }

    /** The next place where a new line may start, the end of the text being the last; then -1. */
    @Override
    public int next() {
        if (at >= text.length()) {
            return -1;
        }
        at++;
        while (at < text.length() && !mayBreak(text.charAt(at - 1), text.charAt(at))) {
            at++;
        }
        return at;
    }

    private boolean mayBreak(char before, char after) {
        if (isSpace(before)) {
            return !isSpace(after) && !(before == ' ' && HeldTogether.at(text, at - 1));
        }
        return switch (before) {
            case '-', HYPHEN -> at > 1 && Character.isLetter(text.charAt(at - 2)) && Character.isLowerCase(after);
            case EN_DASH -> at > 1 && Character.isLetter(text.charAt(at - 2)) && Character.isLetter(after);
            case EM_DASH -> Character.isLetterOrDigit(after);
            case '/' -> at > 1 && text.charAt(at - 2) != ':' && Character.isLetter(after) && text.charAt(at - 2) != '/'
                    && text.lastIndexOf("://", at) >= 0;
            default -> before == SOFT_HYPHEN;
        };
    }

    private static boolean isSpace(char letter) {
        return letter == ' ' || letter == '\n' || letter == '\t'
                || letter >= '\u2000' && letter <= '\u200B' && letter != FIGURE_SPACE;
    }
}
