package exergue.source.markdown;

import exergue.model.HouseStyle;

/**
 * Straight quotation marks to the house's own. Works on a whole paragraph, because whether a mark opens or closes
 * is seen from its neighbours. {@code "} becomes the outer marks, {@code '} the inner ones or an apostrophe; a
 * mark that neither opens nor closes, as in 7", stays as it is.
 */
final class TypographicQuotes {

    private static final String APOSTROPHE = "\u2019";
    private static final String OPENERS = "([{\u2013\u2014-/\u201C\u2018\u00AB\u201E\u201A\u2039";

    private final HouseStyle.Quotes house;
    private final String paragraph;
    private final String[] marks;
    private final int lastCloser;
    private boolean outerOpen;
    private boolean innerOpen;

    /** @param paragraph its words alone, as they follow each other */
    TypographicQuotes(HouseStyle.Quotes house, String paragraph) {
        this.house = house;
        this.paragraph = paragraph;
        this.marks = new String[paragraph.length()];
        this.lastCloser = lastCloser();
        for (int i = 0; i < paragraph.length(); i++) {
            char c = paragraph.charAt(i);
            marks[i] = c == '"' ? outer(i) : c == '\'' ? inner(i) : null;
        }
    }

    /** What is printed for the mark at this index of the paragraph. */
    String mark(int index) {
        return marks[index];
    }

    private String outer(int i) {
        if (mayOpen(i) && !isSpace(i + 1)) {
            outerOpen = true;
            return house.open();
        }
        if (outerOpen) {
            outerOpen = false;
            return house.close();
        }
        return "\"";
    }

    private String inner(int i) {
        if (isWordy(i - 1) && isWordy(i + 1)) {
            return APOSTROPHE;
        }
        if (mayOpen(i) && !isSpace(i + 1)) {
            if (i + 1 < lastCloser) {
                innerOpen = true;
                return house.innerOpen();
            }
            return APOSTROPHE;
        }
        if (innerOpen) {
            innerOpen = false;
            return house.innerClose();
        }
        return i > 0 && Character.isDigit(paragraph.charAt(i - 1)) ? "'" : APOSTROPHE;
    }

    private boolean mayOpen(int i) {
        if (isSpace(i - 1)) {
            return true;
        }
        boolean afterOpening = house.open().equals(marks[i - 1]) || house.innerOpen().equals(marks[i - 1]);
        return afterOpening || marks[i - 1] == null && OPENERS.indexOf(paragraph.charAt(i - 1)) >= 0;
    }

    /** The last single mark that could close one; a mark before it can open one, a mark after it is an apostrophe. */
    private int lastCloser() {
        int j = paragraph.lastIndexOf('\'');
        while (j > 0 && (isSpace(j - 1) || isWordy(j + 1))) {
            j = paragraph.lastIndexOf('\'', j - 1);
        }
        return j;
    }

    private boolean isSpace(int i) {
        return i < 0 || i >= paragraph.length() || Character.isWhitespace(paragraph.charAt(i))
                || paragraph.charAt(i) == '\u00A0' || paragraph.charAt(i) == '\u202F';
    }

    private boolean isWordy(int i) {
        return i >= 0 && i < paragraph.length() && Character.isLetterOrDigit(paragraph.charAt(i));
    }
}
