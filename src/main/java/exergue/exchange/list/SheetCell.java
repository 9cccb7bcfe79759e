package exergue.exchange.list;

import exergue.finding.Place;

/**
 * One cell.
 *
 * @param text   without spaces about it, composed (NFC)
 * @param row    of the sheet, from 1, as a spreadsheet counts
 * @param column of the sheet, from 0
 */
record SheetCell(String text, Place place, int row, int column) {

    boolean isEmpty() {
        return text.isEmpty();
    }

    /** The letters a spreadsheet gives to a column: A for 0, AA for 26. */
    static String letters(int column) {
        String last = Character.toString('A' + column % 26);
        return column < 26 ? last : letters(column / 26 - 1) + last;
    }
}
