package exergue.study.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * A table of printed texts.
 *
 * @param align one of "left", "right" for each column
 * @param notes sentences under the table
 */
public record FigureTable(List<String> align, List<Cell> head, List<List<Cell>> rows, List<String> notes) implements Exhibit {

    public FigureTable {
        align = List.copyOf(align);
        head = List.copyOf(head);
        rows = rows.stream().map(List::copyOf).toList();
        notes = List.copyOf(notes);
    }

    /**
     * What stands in one place of a table.
     *
     * @param text  printed as it is; empty where coins are named
     * @param coins ids of coins; the book prints their numbers
     */
    public record Cell(String text, List<String> coins) {

        public Cell {
            coins = List.copyOf(coins);
        }

        public static Cell of(String text) {
            return new Cell(text, List.of());
        }
    }

    /** The first column to the left, the others to the right. @param rows cells of each */
    public static FigureTable of(List<String> head, List<List<String>> rows, List<String> notes) {
        List<String> align = new ArrayList<>();
        head.forEach(any -> align.add(align.isEmpty() ? "left" : "right"));
        return new FigureTable(align, cells(head), rows.stream().map(FigureTable::cells).toList(), notes);
    }

    private static List<Cell> cells(List<String> texts) {
        return texts.stream().map(Cell::of).toList();
    }

    @Override
    public FigureTable table() {
        return this;
    }
}
