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
    private boolean outerOpen;
    private boolean innerOpen;

    /** @param paragraph its words alone, as they follow each other */
    TypographicQuotes(HouseStyle.Quotes house, String paragraph) {
        this.house = house;
        this.paragraph = paragraph;
        this.marks = new String[paragraph.length()];
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
            if (closesLater(i)) {
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

    private boolean closesLater(int i) {
        for (int j = paragraph.indexOf('\'', i + 2); j > 0; j = paragraph.indexOf('\'', j + 1)) {
            if (!isSpace(j - 1) && !isWordy(j + 1)) {
                return true;
            }
        }
        return false;
    }

    private boolean isSpace(int i) {
        return i < 0 || i >= paragraph.length() || Character.isWhitespace(paragraph.charAt(i))
                || paragraph.charAt(i) == '\u00A0';
    }

    private boolean isWordy(int i) {
        return i >= 0 && i < paragraph.length() && Character.isLetterOrDigit(paragraph.charAt(i));
    }
}
