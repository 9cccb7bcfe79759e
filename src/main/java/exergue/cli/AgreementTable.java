package exergue.cli;

import exergue.study.AgreementRow;
import java.util.ArrayList;
import java.util.List;

/** Sets the rows of agreement in columns, for a screen. */
final class AgreementTable {

    private static final String GAP = "  ";

    private AgreementTable() { }

    /** A line for the heads and one for each row, each ended. */
    static String of(List<AgreementRow> rows) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(cells(AgreementRow.HEAD));
        rows.forEach(row -> lines.add(cells(row)));
        StringBuilder table = new StringBuilder();
        for (List<String> line : lines) {
            StringBuilder set = new StringBuilder();
            for (int column = 0; column < line.size(); column++) {
                set.append(line.get(column)).append(" ".repeat(width(lines, column) - width(line.get(column)))).append(GAP);
            }
            table.append(set.toString().stripTrailing()).append('\n');
        }
        return table.toString();
    }

    private static List<String> cells(AgreementRow row) {
        return List.of(row.hands(), row.what(), row.n(), row.bias(), row.sd(), row.limits(), row.equal(),
                row.withinOneHour());
    }

    private static int width(List<List<String>> lines, int column) {
        return lines.stream().mapToInt(line -> width(line.get(column))).max().orElse(0);
    }

    private static int width(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}
