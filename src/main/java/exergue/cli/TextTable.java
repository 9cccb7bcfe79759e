package exergue.cli;

import java.util.List;

/** Sets rows in columns, for a screen. */
final class TextTable {

    private static final String GAP = "  ";

    private TextTable() { }

    /** @param rows of equal length, the heads first; each ends its line */
    static String of(List<List<String>> rows) {
        StringBuilder table = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < row.size(); column++) {
                line.append(row.get(column)).append(" ".repeat(width(rows, column) - width(row.get(column)))).append(GAP);
            }
            table.append(line.toString().stripTrailing()).append('\n');
        }
        return table.toString();
    }

    private static int width(List<List<String>> rows, int column) {
        return rows.stream().mapToInt(row -> width(row.get(column))).max().orElse(0);
    }

    private static int width(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}
