package exergue.cli.report;

/**
 * Text from the source made harmless for a terminal: a catalogue can come from anyone, and control characters or
 * hidden changes of writing direction in it could make the screen show something else than what is written.
 */
final class Harmless {

    private static final int SHOWN_INSTEAD = 0xFFFD;

    private Harmless() { }

    /** On one line: line ends and tabs become spaces, other control characters a replacement character. */
    static String oneLine(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().forEach(c -> shown.appendCodePoint(c == '\n' || c == '\r' || c == '\t' ? ' ' : character(c)));
        return shown.toString();
    }

    static int character(int c) {
        boolean control = Character.isISOControl(c) || c == 0x2028 || c == 0x2029
                || c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
        return control || turnsDirection(c) ? SHOWN_INSTEAD : c;
    }

    private static boolean turnsDirection(int c) {
        return c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
    }
}
