package exergue.cli;

import java.util.Arrays;
import java.util.List;

/** Sets rows in columns, for a screen. */
final class TextTable {

    private static final String GAP = "  ";

    private TextTable() { }

    /** @param rows of equal length, the heads first; each ends its line */
    static String of(List<List<String>> rows) {
        return of(rows, List.of());
    }

    /** @param align "right" for columns that are flush at the right; any other, or none, for the left */
    static String of(List<List<String>> rows, List<String> align) {
        int columns = rows.isEmpty() ? 0 : rows.get(0).size();
        int[] widths = new int[columns];
        rows.forEach(row -> Arrays.setAll(widths, column -> Math.max(widths[column], width(row.get(column)))));
        StringBuilder table = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < columns; column++) {
                String room = " ".repeat(widths[column] - width(row.get(column)));
                boolean right = column < align.size() && align.get(column).equals("right");
                line.append(right ? room + row.get(column) : row.get(column) + room).append(GAP);
            }
            table.append(line.toString().stripTrailing()).append('\n');
        }
        return table.toString();
    }

    private static int width(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}
