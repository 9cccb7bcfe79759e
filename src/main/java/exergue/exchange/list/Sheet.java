package exergue.exchange.list;

import java.util.List;

/**
 * A list as it was found.
 *
 * @param how      in words, how it was read: "UTF-8, cells parted by semicolons"
 * @param encodingTaken whether its encoding is only what was left
 * @param shown    its text, for showing lines of it
 * @param above    rows above the headings that have something in them
 * @param headed   the row that has the headings
 * @param headings by column; no two alike
 * @param rows     below the headings, without blank ones
 */
record Sheet(String how, boolean encodingTaken, String shown, List<SheetRow> above, SheetRow headed, List<String> headings, List<SheetRow> rows) {

    Sheet {
        above = List.copyOf(above);
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /** Row of the sheet that has the headings, from 1. */
    int headingsRow() {
        return headed.number();
    }

    /** How many cells of a column have something in them. */
    long filled(int column) {
        return rows.stream().filter(row -> !row.cell(column).isEmpty()).count();
    }
}
