package exergue.exchange.list;

import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Findings on rows and cells, in the terms of the sheet. What is the same in many rows is said once, with all of them. */
final class RowFindings {

    private static final int ROWS_NAMED = 8;

    private final Map<List<String>, Said> said = new LinkedHashMap<>();

    private record Said(Code code, Place place, String where, String what, String remedy, List<Integer> rows) { }

    /**
     * @param about what makes it the same finding in another row of this column
     * @param what  a sentence without its place
     */
    void add(Code code, Spot spot, String about, String what, String remedy) {
        said.computeIfAbsent(List.of(code.id(), spot.heading(), about), key -> new Said(code, spot.place(), spot.heading(), what, remedy,
                new ArrayList<>())).rows().add(spot.row());
    }

    /** Of this row alone. */
    void add(Code code, Spot spot, String what, String remedy) {
        add(code, spot, "row " + spot.row() + " " + what, what, remedy);
    }

    /** @param heading empty where the whole row is meant */
    record Spot(int row, String heading, Place place) {

        static Spot of(SheetCell cell, String heading) {
            return new Spot(cell.row(), heading, cell.place());
        }

        static Spot of(SheetRow row) {
            return new Spot(row.number(), "", row.place());
        }
    }

    List<Finding> all() {
        return said.values().stream().map(RowFindings::finding).toList();
    }

    private static Finding finding(Said one) {
        String column = one.where().isEmpty() ? "" : ", column “" + one.where() + "”";
        List<Integer> others = one.rows().subList(1, one.rows().size()).stream().distinct().toList();
        return Finding.of(one.code(), one.place(), "", "Row " + one.rows().get(0) + column + also(others) + ": " + one.what(), one.remedy());
    }

    /** " (and rows 18, 19, 25)" */
    static String also(List<Integer> rows) {
        return rows.isEmpty() ? "" : " (and " + rows(rows) + ")";
    }

    /** "row 4", "rows 4, 7 and 12", "rows 4, 7, 12 and 40 more" */
    static String rows(List<Integer> rows) {
        int more = rows.size() - ROWS_NAMED;
        List<String> named = new ArrayList<>(rows.stream().limit(ROWS_NAMED).map(row -> Integer.toString(row)).toList());
        if (more > 0) {
            named.add(more + " more");
        }
        int last = named.size() - 1;
        return (rows.size() == 1 ? "row " : "rows ") + (last == 0 ? named.get(0)
                : named.subList(0, last).stream().collect(Collectors.joining(", ")) + " and " + named.get(last));
    }
}
