package exergue.exchange;

import exergue.study.figure.FigureTable;
import exergue.study.figure.FigureTable.Cell;
import exergue.study.figure.Wording;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * A table of figures as CSV (RFC 4180, with a line of headings), for other programs: a dash for what is undefined becomes an empty
 * cell, a true minus sign a hyphen, a no-break space a space.
 */
public final class FigureCsv {

    private FigureCsv() { }

    public static String of(FigureTable table) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter rows = new CSVPrinter(text, CSVFormat.RFC4180)) {
            rows.printRecord(cells(table.head()));
            for (List<Cell> row : table.rows()) {
                rows.printRecord(cells(row));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a string builder has no disk to fail
        }
        return text.toString();
    }

    private static List<String> cells(List<Cell> cells) {
        List<String> texts = new ArrayList<>();
        for (Cell cell : cells) {
            texts.add(cell.coins().isEmpty() ? plain(cell.text()) : String.join("; ", cell.coins()));
        }
        return texts;
    }

    private static String plain(String text) {
        return text.equals(Wording.NONE) ? "" : text.replace('\u2212', '-').replace('\u00A0', ' ').replace('\u202F', ' ');
    }
}
