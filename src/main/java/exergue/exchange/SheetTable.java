package exergue.exchange;

import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.source.text.SourceText;
import exergue.study.match.SheetCodes;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table in a text file, with the place of every cell. The cells are parted by whichever of comma, semicolon and tab the line
 * of headings has most of.
 *
 * @param headings in small letters, without spaces about them, with their places
 * @param rows     without those that are blank
 */
record SheetTable(List<Cell> headings, List<List<Cell>> rows) {

    SheetTable {
        headings = List.copyOf(headings);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** @param text without spaces about it */
    record Cell(String text, Place place) { }

    /** Cells by the heading of their column; empty ones are left out. */
    Map<String, Cell> row(int index) {
        Map<String, Cell> row = new LinkedHashMap<>();
        List<Cell> cells = rows.get(index);
        for (int column = 0; column < Math.min(cells.size(), headings.size()); column++) {
            if (!cells.get(column).text().isEmpty()) {
                row.putIfAbsent(headings.get(column).text(), cells.get(column));
            }
        }
        return row;
    }

    /** Where the row begins. */
    Place place(int index) {
        return rows.get(index).get(0).place();
    }

    /** Either the table, or the finding that says why there is none. */
    record Read(Optional<SheetTable> table, Optional<Finding> fault) { }

    static Read of(SourceText text) {
        char mark = mark(text.text());
        List<List<Cell>> rows = new ArrayList<>();
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(mark).setIgnoreEmptyLines(true).build();
        try (CSVParser parser = CSVParser.parse(new StringReader(text.text()), format)) {
            for (CSVRecord record : parser) {
                rows.add(cells(record, text, mark));
            }
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            return new Read(Optional.empty(), Optional.of(Finding.of(SheetCodes.NOT_A_TABLE, Place.ofFile(text.file()), "",
                    "After " + rows.size() + " rows the table cannot be read on: a quotation mark is opened and not closed, or something "
                            + "stands behind one that closes a cell.",
                    "Put quotation marks round whole cells only, and write one within a cell twice.")));
        }
        if (rows.isEmpty()) {
            return new Read(Optional.empty(), Optional.of(Finding.of(SheetCodes.NOT_A_TABLE, Place.ofFile(text.file()), "",
                    "The sheet “" + text.file() + "” is empty.", "Write a line of headings, such as label,ticket,weight,diameter,axis, "
                            + "and a line for each coin.")));
        }
        List<Cell> headings = rows.get(0).stream().map(cell -> new Cell(cell.text().toLowerCase(Locale.ROOT), cell.place())).toList();
        return new Read(Optional.of(new SheetTable(headings, rows.subList(1, rows.size()).stream()
                .filter(row -> row.stream().anyMatch(cell -> !cell.text().isEmpty())).toList())), Optional.empty());
    }

    private static char mark(String text) {
        String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        return Stream.of(',', ';', '\t').max(Comparator.comparingLong((Character mark) -> first.chars().filter(c -> c == mark).count())
                .thenComparing(mark -> mark == ',')).orElseThrow();
    }

    private static List<Cell> cells(CSVRecord record, SourceText text, char mark) {
        List<Place> places = new CellPlaces(text, mark).of(record);
        List<Cell> cells = new ArrayList<>();
        for (String cell : record) {
            cells.add(new Cell(cell.strip(), places.get(cells.size())));
        }
        return cells;
    }
}
