package exergue.measure;

/**
 * The text of a reading with the many typographic forms of one mark brought to one: every space to a plain space,
 * every dash to a hyphen, primes and curly quotes to straight ones. Remembers where each character stood, so that a
 * remark can point into the text as it was written.
 */
final class TextMarks {

    private static final String ARROWS = "↑↗→↘↓↙←↖";
    private static final String[] ARROW_FORMS = {"⬆⇑⇧🡑🡅", "⬈⇗🡕", "➡⮕⇒⇨🡒", "⬊⇘🡖", "⬇⇓⇩🡓", "⬋⇙🡗", "⬅⇐⇦🡐", "⬉⇖🡔"};

    private final String plain;
    private final int[] at;
    private final int[] written;

    private TextMarks(String plain, int[] at, int[] written) {
        this.plain = plain;
        this.at = at;
        this.written = written;
    }

    static TextMarks of(String text) {
        int[] written = text.codePoints().toArray();
        StringBuilder plain = new StringBuilder();
        int[] at = new int[written.length];
        for (int i = 0; i < written.length; i++) {
            if (!unseen(written[i])) {
                at[plain.length()] = i;
                plain.append(plain(written[i]));
            }
        }
        return new TextMarks(plain.toString(), at, written);
    }

    /** One character for each code point that is seen. */
    String plain() {
        return plain;
    }

    /** Where in the text as written the character {@code i} of {@link #plain()} stands, in code points. */
    int place(int i) {
        return at[i];
    }

    /** The whole text as it was written. */
    String written() {
        return new String(written, 0, written.length);
    }

    /** The text as it was written between two characters of {@link #plain()}. */
    String written(int from, int to) {
        if (from >= to) {
            return "";
        }
        return new String(written, at[from], at[to - 1] + 1 - at[from]);
    }

    /** The whole text between quotation marks, or its beginning where it is long; unprintable characters named. */
    String quoted() {
        return quoted(0, plain.length());
    }

    String quoted(int from, int to) {
        StringBuilder safe = new StringBuilder("“");
        int[] points = written(from, to).strip().codePoints().toArray();
        for (int i = 0; i < points.length && i < 40; i++) {
            if (Character.isISOControl(points[i]) || !Character.isDefined(points[i]) || isSurrogate(points[i])
                    || unseen(points[i])) {
                safe.append(String.format(java.util.Locale.ROOT, "[U+%04X]", points[i]));
            } else {
                safe.appendCodePoint(points[i]);
            }
        }
        return safe.append(points.length > 40 ? "…”" : "”").toString();
    }

    /** A remark about the characters from and to. */
    Remark remark(ReadingFault fault, int from, int to, String what, String remedy) {
        if (from >= to) {
            return new Remark(fault, 0, written.length, what, remedy);
        }
        return new Remark(fault, at[from], at[to - 1] + 1 - at[from], what, remedy);
    }

    private static boolean isSurrogate(int point) {
        return point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
    }

    /** Variation selectors after arrows, joiners, direction marks and soft hyphens: on the page but not seen. */
    private static boolean unseen(int point) {
        return point >= 0xFE00 && point <= 0xFE0F || point >= 0x200B && point <= 0x200F
                || point == 0x2060 || point == 0xFEFF || point == 0x00AD;
    }

    private static char plain(int point) {
        if (Character.isSpaceChar(point) || Character.isWhitespace(point)) {
            return ' ';
        }
        for (int i = 0; i < ARROW_FORMS.length; i++) {
            if (ARROW_FORMS[i].indexOf(point) >= 0) {
                return ARROWS.charAt(i);
            }
        }
        return switch (point) {
            case '*', '✕', '✖', '⨯', '∗' -> '×';
            case '‐', '‑', '‒', '–', '—', '−' -> '-';
            case '′', '’', '‘', 'ʹ', '´', '`' -> '\'';
            case '″', '“', '”', '„', 'ʺ' -> '"';
            case '⁄', '∕' -> '/';
            case '·', '⋅', '∙' -> '.';
            case 'º', '˚' -> '°';
            case '≈', '∼', '≃' -> '~';
            case '：' -> ':';
            default -> Character.isBmpCodePoint(point) ? (char) point : '\uFFFD';
        };
    }

    /** Eighths of a turn clockwise from upright, or -1 for what is no arrow. */
    static int arrow(char sign) {
        return ARROWS.indexOf(sign);
    }

    /** The arrow that points so many eighths of a turn clockwise from upright. */
    static char arrow(int eighths) {
        return ARROWS.charAt(eighths);
    }
}
