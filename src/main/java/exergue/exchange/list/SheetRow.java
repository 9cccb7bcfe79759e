package exergue.exchange.list;

import exergue.finding.Place;
import java.util.List;
import java.util.Optional;

/** One row. @param number of the sheet, from 1, as a spreadsheet counts */
record SheetRow(int number, List<SheetCell> cells) {

    SheetRow {
        cells = List.copyOf(cells);
    }

    boolean isBlank() {
        return cells.stream().allMatch(SheetCell::isEmpty);
    }

    long filled() {
        return cells.stream().filter(cell -> !cell.isEmpty()).count();
    }

    Optional<SheetCell> first() {
        return cells.stream().filter(cell -> !cell.isEmpty()).findFirst();
    }

    /** The cell of a column; an empty one where the row is too short. */
    SheetCell cell(int column) {
        return column < cells.size() ? cells.get(column) : new SheetCell("", place(), number, column);
    }

    Place place() {
        return first().or(() -> cells.stream().findFirst()).map(SheetCell::place).orElseThrow();
    }
}
