package exergue.exchange.list;

import exergue.exchange.CellPlaces;
import exergue.files.MemoryTree;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.model.Written;
import exergue.source.list.ListCodes;
import exergue.source.list.ListPlan;
import exergue.source.text.Notebook;
import exergue.source.text.SourceText;
import exergue.source.text.TextReader;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Bytes of a list to rows and cells with their places (RFC 4180, but for what parts the cells). */
final class SheetReader {

    /** How many rows are looked at to find the headings. */
    private static final int LOOKED_AT = 100;

    private final String file;
    private final ListPlan.Layout layout;
    private final Notebook notebook;

    private SheetReader(String file, ListPlan.Layout layout, Notebook notebook) {
        this.file = file;
        this.layout = layout;
        this.notebook = notebook;
    }

    /** The sheet; empty where it cannot be read, which is in the notebook then. */
    static Optional<Sheet> read(byte[] bytes, String file, ListPlan.Layout layout, Notebook notebook) {
        return new SheetReader(file, layout, notebook).read(bytes);
    }

    private Optional<Sheet> read(byte[] bytes) {
        if (bytes.length > NamedBytes.MOST) {
            notebook.add(Finding.of(ListCodes.TOO_LARGE, Place.ofFile(file), "", "The list has more than " + NamedBytes.MOST
                    + " bytes, and is not read.", "Split it, or look whether it is the right file."));
            return Optional.empty();
        }
        if (startsWith(bytes, 'P', 'K', 3) || startsWith(bytes, 0xD0, 0xCF, 0x11)) {
            notebook.add(Finding.of(ListCodes.NOT_A_TABLE, Place.ofFile(file), "", "The list is a spreadsheet, not a text file.",
                    "Open it in the program it was made with and save it as “CSV UTF-8”; then name that file."));
            return Optional.empty();
        }
        Decoded decoded = Decoded.of(bytes, file, layout.encoding());
        decoded.said().ifPresent(notebook::add);
        return decoded.text().flatMap(text -> sheet(text.replace('\u000B', ' '), decoded));
    }

    /** Packed files, such as spreadsheets are today, and the compound files they were before. */
    private static boolean startsWith(byte[] bytes, int... first) {
        return bytes.length > first.length && IntStream.range(0, first.length).allMatch(i -> (bytes[i] & 0xFF) == first[i]);
    }

    private Optional<Sheet> sheet(String decoded, Decoded from) {
        SourceText text = new TextReader(new MemoryTree(Map.of()), notebook).decoded(file, decoded);
        Optional<Character> own = CellMark.named(text.text());
        char mark = layout.mark().map(Written::value).or(() -> own).orElseGet(() -> CellMark.of(text.text()));
        List<SheetRow> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(new StringReader(text.text()), CellMark.format(mark))) {
            CellPlaces places = new CellPlaces(text, mark);
            for (CSVRecord record : parser) {
                boolean namesMark = own.isPresent() && record.getRecordNumber() == 1;
                if (!namesMark) {
                    rows.add(row(record, rows.size() + 1, places.of(record), text));
                }
            }
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            notebook.add(Finding.of(ListCodes.NOT_A_TABLE, rows.isEmpty() ? Place.ofFile(file) : rows.get(rows.size() - 1).place(), "",
                    "After row " + rows.size() + " the list cannot be read on: a quotation mark is opened and not closed, or something "
                            + "stands behind one that closes a cell.",
                    "Save the list again from the spreadsheet, which sets quotation marks rightly; or write a mark within a cell twice."));
            return Optional.empty();
        }
        String how = from.shownEncoding() + ", cells parted by " + CellMark.word(mark);
        return headings(rows).map(at -> new Sheet(how, from.taken(), text.text(), filled(rows.subList(0, at)), rows.get(at), unlike(rows.get(at)),
                filled(rows.subList(at + 1, rows.size()))));
    }

    private static SheetRow row(CSVRecord record, int number, List<Place> places, SourceText text) {
        List<SheetCell> cells = new ArrayList<>();
        for (String cell : record) {
            cells.add(new SheetCell(text.composed(stripped(cell)), places.get(cells.size()), number, cells.size()));
        }
        return new SheetRow(number, cells);
    }

    /** Without spaces about it, those that do not break included. */
    private static String stripped(String cell) {
        return cell.replaceAll("^[\\s\\u00A0\\u202F\\u2007]+|[\\s\\u00A0\\u202F\\u2007]+$", "");
    }

    /** Index of the row of headings: the one that is named, or the first that has no figures and is as wide as most of the list. */
    private Optional<Integer> headings(List<SheetRow> rows) {
        if (layout.headingsRow().isPresent()) {
            int told = layout.headingsRow().get().value();
            if (told >= 1 && told <= rows.size() && !rows.get(told - 1).isBlank()) {
                return Optional.of(told - 1);
            }
            notebook.add(Finding.of(ListCodes.NOT_A_TABLE, layout.headingsRow().get().place(), "headings-in-row",
                    "Row " + told + " of the list is empty or not there.", "Write the number that the spreadsheet shows beside the row of headings."));
            return Optional.empty();
        }
        if (rows.stream().allMatch(SheetRow::isBlank)) {
            notebook.add(Finding.of(ListCodes.NOT_A_TABLE, Place.ofFile(file), "", "The list is empty.",
                    "Save it again from the spreadsheet: the sheet that has the coins, not another."));
            return Optional.empty();
        }
        List<SheetRow> first = rows.subList(0, Math.min(rows.size(), LOOKED_AT));
        long widest = first.stream().mapToLong(SheetRow::filled).max().orElse(0);
        for (SheetRow row : first) {
            boolean figures = row.cells().stream().anyMatch(cell -> cell.text().matches("[-+<>~]?\\s*[0-9].*"));
            if (row.filled() >= 2 && row.filled() * 5 >= widest * 3 && !figures) {
                return Optional.of(row.number() - 1);
            }
        }
        notebook.add(Finding.of(ListCodes.NOT_A_TABLE, Place.ofFile(file), "", "The list has no row of headings: words over two columns or more.",
                "Put a row of headings over the coins; or, if there is one, write its number: headings-in-row: 1."));
        return Optional.empty();
    }

    private static List<SheetRow> filled(List<SheetRow> rows) {
        return rows.stream().filter(row -> !row.isBlank()).toList();
    }

    /** Headings on one line; a second of the same words is numbered, and an empty one goes by the letter of its column. */
    private static List<String> unlike(SheetRow row) {
        Map<String, Integer> seen = new HashMap<>();
        List<String> headings = new ArrayList<>();
        for (SheetCell cell : row.cells()) {
            String words = cell.text().replaceAll("\\s+", " ");
            int times = words.isEmpty() ? 1 : seen.merge(words, 1, Integer::sum);
            headings.add(words.isEmpty() ? "column " + SheetCell.letters(cell.column()) : times == 1 ? words : words + " (" + times + ")");
        }
        return headings;
    }
}
