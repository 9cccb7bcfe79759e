package exergue.typeset;

import exergue.edition.Specimen;
import exergue.edition.Specimen.Cell;
import exergue.measure.Kind;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Figures under each other. Every figure of a column starts with as many figure spaces as it has fewer digits before
 * the decimal mark than the longest, so that the marks stand in one line and what follows a figure hangs free.
 */
final class Alignment {

    private static final String FIGURE_SPACE = "\u2007";
    private static final int LEAST_DIGITS = 2;

    private final List<Kind> columns;
    private final Map<Kind, Integer> digits;

    private Alignment(List<Kind> columns, Map<Kind, Integer> digits) {
        this.columns = columns;
        this.digits = digits;
    }

    static Alignment of(List<Specimen> coins, List<Kind> columns) {
        Map<Kind, Integer> digits = new EnumMap<>(Kind.class);
        for (Specimen coin : coins) {
            for (Cell cell : coin.cells()) {
                digits.merge(cell.kind(), wholeDigits(cell), Math::max);
            }
        }
        return new Alignment(columns, digits);
    }

    /** One text a column, empty where the coin has no such reading; columns need no separators. */
    List<String> cells(Specimen coin) {
        List<String> texts = new ArrayList<>();
        for (Kind column : columns) {
            texts.add(coin.cells().stream().filter(cell -> cell.kind() == column).findFirst()
                    .map(this::padded).orElse(""));
        }
        return texts;
    }

    private String padded(Cell cell) {
        String text = cell.text();
        int widest = Math.max(LEAST_DIGITS, digits.getOrDefault(cell.kind(), LEAST_DIGITS));
        return text.isEmpty() ? "" : FIGURE_SPACE.repeat(Math.max(0, widest - Math.max(1, wholeDigits(cell)))) + text;
    }

    /** Figure, unit, sign and separator as they stand in the line, without the space that only parts two members. */
    static String member(Cell cell) {
        return (cell.text() + cell.after()).stripTrailing();
    }

    /** Digits of the first number in the figure, before its decimal mark. */
    private static int wholeDigits(Cell cell) {
        String figure = cell.figure();
        int from = 0;
        while (from < figure.length() && !isDigit(figure.charAt(from))) {
            from++;
        }
        int to = from;
        while (to < figure.length() && isDigit(figure.charAt(to))) {
            to++;
        }
        return to - from;
    }

    private static boolean isDigit(char letter) {
        return letter >= '0' && letter <= '9';
    }
}
