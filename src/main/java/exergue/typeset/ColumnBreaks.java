package exergue.typeset;

import java.util.ArrayList;
import java.util.List;

/** Shares lines out over columns of the same height. Heights are in the engine's dots. */
final class ColumnBreaks {

    /**
     * @param height of the line alone
     * @param before room before it, which is lost at the head of a column
     */
    record Row(int height, int before) { }

    private final List<Row> rows;
    private final int columns;

    ColumnBreaks(List<Row> rows, int columns) {
        this.rows = List.copyOf(rows);
        this.columns = columns;
    }

    /** Where each column begins that is needed from this row on, none higher than asked; the last member is where they end. */
    List<Integer> filled(int from, int height) {
        List<Integer> starts = new ArrayList<>();
        int at = from;
        while (at < rows.size() && starts.size() < columns) {
            starts.add(at);
            at = end(at, height);
        }
        starts.add(at);
        return starts;
    }

    /** The same for all that is left, with the least height that takes it. */
    List<Integer> balanced(int from, int atMost) {
        int low = 1;
        int high = atMost;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (takesAll(from, middle)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return filled(from, high);
    }

    boolean takesAll(int from, int height) {
        List<Integer> starts = filled(from, height);
        boolean each = rows.subList(from, rows.size()).stream().allMatch(row -> row.height() <= height);
        return each && starts.get(starts.size() - 1) == rows.size();
    }

    /** How high the highest of these columns is. */
    int height(List<Integer> starts) {
        int highest = 0;
        for (int i = 0; i + 1 < starts.size(); i++) {
            int height = 0;
            for (int row = starts.get(i); row < starts.get(i + 1); row++) {
                height += rows.get(row).height() + (row == starts.get(i) ? 0 : rows.get(row).before());
            }
            highest = Math.max(highest, height);
        }
        return highest;
    }

    /** At least one row, so that a row higher than a page does not stop the work. */
    private int end(int from, int height) {
        int used = rows.get(from).height();
        int at = from + 1;
        while (at < rows.size() && used + rows.get(at).before() + rows.get(at).height() <= height) {
            used += rows.get(at).before() + rows.get(at).height();
            at++;
        }
        return at;
    }
}
