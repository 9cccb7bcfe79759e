package exergue.exchange;

import exergue.edition.DataRow;
import exergue.edition.DataRow.Figure;
import exergue.measure.Kind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * The catalogue's data as a table (RFC 4180, with a line of headings). Exact values stand in the column named after
 * their unit; a two-way figure or a range has its second value in the column after it.
 */
public final class CatalogueCsv {

    private CatalogueCsv() { }

    /** All rows in their order; columns of measurements in the order of the house's measurement line. */
    public static String of(List<DataRow> rows) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter table = new CSVPrinter(text, CSVFormat.RFC4180)) {
            table.printRecord(headings(rows));
            for (DataRow row : rows) {
                table.printRecord(cells(row));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a string builder has no disk to fail
        }
        return text.toString();
    }

    private static List<String> headings(List<DataRow> rows) {
        List<String> headings = new ArrayList<>(
                List.of("id", "number", "type", "mint", "ruler", "denomination", "metal", "date-edtf", "date-printed",
                        "era-date", "obverse-legend", "reverse-legend"));
        List<Figure> figures = rows.isEmpty() ? List.of() : rows.get(0).figures();
        for (Figure figure : figures) {
            String word = figure.kind().word();
            String value = word + "-" + unit(figure.kind());
            headings.addAll(List.of(word + "-recorded", word + "-by", word + "-status", value, value + "-second",
                    word + "-printed"));
        }
        headings.addAll(List.of("fineness", "other-hands", "measurement-line", "damage", "weight-counts", "collection", "find-spot", "page"));
        return headings;
    }

    private static List<String> cells(DataRow row) {
        List<String> cells = new ArrayList<>(List.of(row.id(), row.number(), row.type(), row.mint(),
                row.ruler().orElse(""), row.denomination(), row.metal(), row.struck().date().map(DataRow.Dated::edtf).orElse(""),
                row.struck().date().map(DataRow.Dated::printed).orElse(""), row.struck().eraDate().orElse(""),
                row.struck().obverseLegend().orElse(""), row.struck().reverseLegend().orElse("")));
        for (Figure figure : row.figures()) {
            cells.addAll(List.of(figure.recorded(), figure.convention().orElse(""), figure.status(),
                    value(figure, 0), value(figure, 1), figure.printed()));
        }
        cells.addAll(List.of(row.fineness().orElse(""), String.join("; ", row.others().stream().map(CatalogueCsv::other).toList()), row.line(), String.join("; ", row.damage()), row.weightCounts() ? "yes" : "no",
                row.collection().orElse(""), row.findSpot().orElse(""), row.page().orElse("")));
        return cells;
    }

    /** "pellingham-1894: weight 59.7 gr" */
    private static String other(DataRow.Other other) {
        return other.convention() + ": " + other.kind().word() + " " + other.recorded();
    }

    private static String value(Figure figure, int index) {
        List<BigDecimal> values = figure.values();
        return index < values.size() ? values.get(index).toPlainString() : "";
    }

    /** Symbol of the normal unit, which every value of this kind stands in. */
    private static String unit(Kind kind) {
        return switch (kind) {
            case WEIGHT -> "g";
            case DIAMETER, THICKNESS -> "mm";
            case AXIS -> "h";
            case DENSITY -> "g-per-cm3";
            case SURFACE -> "mm2";
        };
    }
}
