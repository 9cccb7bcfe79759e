package exergue.check.rules;

import exergue.check.Rule;
import exergue.check.Tables;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Inline;
import exergue.model.Prose;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** A row or column of totals in a table of an author’s is not the sum of what stands before it. Only whole numbers are added up:
 * decimals may have been rounded. */
public final class TotalDoesNotAddUp implements Rule {

    static final Code CODE = new Code("total-does-not-add-up", Severity.WARNING, "A total in a table is not the sum of its figures",
            "Readers add up. Where a total is off, either it or one of the figures is a slip, or something is counted that the table "
                    + "does not show.",
            """
                    | Trench | Coins |
                    | --- | --: |
                    | A | 12 |
                    | B | 7 |
                    | Total | 20 |
                    """,
            """
                    | Trench | Coins |
                    | --- | --: |
                    | A | 12 |
                    | B | 7 |
                    | Total | 19 |
                    """);

    /** In the languages that a book can have. */
    private static final Set<String> TOTAL = Set.of("total", "totals", "sum", "all", "together", "totaux", "ensemble", "somme", "summe",
            "gesamt", "insgesamt", "zusammen", "totale", "somma", "insieme");
    private static final Pattern WHOLE = Pattern.compile("[0-9]{1,9}");
    private static final Pattern NOTHING = Pattern.compile("[-–—.]?");

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (Prose.Table table : Tables.in(catalogue)) {
            List<List<String>> rows = table.rows().stream()
                    .map(row -> row.stream().map(TotalDoesNotAddUp::cell).toList()).toList();
            int last = rows.size() - 1;
            if (last > 1 && isTotal(rows.get(last).get(0)) && rows.subList(0, last).stream().noneMatch(row -> isTotal(row.get(0)))) {
                IntStream.range(1, rows.get(last).size()).forEach(column -> look(
                        rows.subList(0, last).stream().map(row -> column < row.size() ? row.get(column) : "").toList(),
                        rows.get(last).get(column), place(table, last), "column " + (column + 1)).ifPresent(faults::add));
            }
            int right = table.head().size() - 1;
            if (right > 2 && isTotal(cell(table.head().get(right)))) {
                IntStream.range(0, rows.size()).filter(row -> rows.get(row).size() == right + 1).forEach(row -> look(
                        rows.get(row).subList(1, right), rows.get(row).get(right), place(table, row),
                        "the row “" + rows.get(row).get(0) + "”").ifPresent(faults::add));
            }
        }
        return faults;
    }

    private static String cell(List<Inline> runs) {
        return Inline.plain(runs).replaceAll("[\\s\u00A0\u202F]+", " ").strip();
    }

    private static boolean isTotal(String words) {
        return TOTAL.contains(words.toLowerCase(Locale.ROOT).replaceAll("[.:]$", ""));
    }

    /** A row stands on a line of its own, below the head and the line of dashes. */
    private static Place place(Prose.Table table, int row) {
        return new Place(table.place().file(), table.place().line() + 2 + row, Math.max(1, table.place().column()), 0);
    }

    private static Optional<Finding> look(List<String> figures, String total, Place place, String where) {
        boolean canBeAdded = WHOLE.matcher(total).matches()
                && figures.stream().allMatch(figure -> WHOLE.matcher(figure).matches() || NOTHING.matcher(figure).matches())
                && figures.stream().filter(figure -> WHOLE.matcher(figure).matches()).count() > 1;
        if (!canBeAdded) {
            return Optional.empty();
        }
        long sum = figures.stream().filter(figure -> WHOLE.matcher(figure).matches()).mapToLong(Long::parseLong).sum();
        return sum == Long.parseLong(total) ? Optional.empty() : Optional.of(Finding.of(CODE, place, "",
                "The total in " + where + " is " + total + ", and its figures make " + sum + ".",
                "Mend the total or the figure that is wrong; if something is counted that the table does not show, add it as a row."));
    }
}
