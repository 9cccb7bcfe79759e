package exergue.cli;

import exergue.study.AgreementRow;
import java.util.ArrayList;
import java.util.List;

/** Sets the rows of agreement in columns, for a screen. */
final class AgreementTable {

    private AgreementTable() { }

    /** A line for the heads and one for each row, each ended. */
    static String of(List<AgreementRow> rows) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(cells(AgreementRow.HEAD));
        rows.forEach(row -> lines.add(cells(row)));
        return TextTable.of(lines);
    }

    private static List<String> cells(AgreementRow row) {
        return List.of(row.hands(), row.what(), row.n(), row.bias(), row.sd(), row.limits(), row.equal(),
                row.withinOneHour());
    }
}
