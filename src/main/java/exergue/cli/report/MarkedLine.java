package exergue.cli.report;

/**
 * One line of the source as a terminal shows it, and the line of carets that goes under it.
 *
 * @param shown the line; a part of it, between ellipses, where it is long
 * @param marks blanks, then carets under the value; one caret where its length is not known
 */
record MarkedLine(String shown, String marks) {

    private static final int TAB = 4;
    private static final int LONGEST = 100;
    private static final int BEFORE_VALUE = 40;

    /**
     * @param column first code point of the value, from 1
     * @param length of the value in code points; 0 where unknown
     */
    static MarkedLine of(String line, int column, int length) {
        int[] characters = line.codePoints().toArray();
        int first = Math.min(Math.max(column - 1, 0), characters.length);
        int end = Math.min(first + Math.max(length, 1), characters.length);
        int from = characters.length > LONGEST ? Math.max(0, first - BEFORE_VALUE) : 0;
        int to = Math.min(characters.length, from + LONGEST);

        StringBuilder shown = new StringBuilder(from > 0 ? "…" : "");
        StringBuilder marks = new StringBuilder(from > 0 ? " " : "");
        for (int i = from; i < to; i++) {
            String mark = i < first ? " " : i < end ? "^" : "";
            int width = characters[i] == '\t' ? TAB : CharacterWidth.of(Harmless.character(characters[i]));
            show(characters[i], shown);
            marks.append(mark.repeat(width));
        }
        if (marks.indexOf("^") < 0) {
            marks.append('^');
        }
        return new MarkedLine(to < characters.length ? shown.append('…').toString() : shown.toString(),
                marks.toString());
    }

    private static void show(int character, StringBuilder shown) {
        if (character == '\t') {
            shown.append(" ".repeat(TAB));
        } else {
            shown.appendCodePoint(Harmless.character(character));
        }
    }
}
