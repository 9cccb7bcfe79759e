package exergue.exchange.list;

import exergue.exchange.list.RowFindings.Spot;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.measure.Convention;
import exergue.measure.Parsed;
import exergue.measure.ReadingFault;
import exergue.measure.ReadingParser;
import exergue.source.list.ColumnContent;
import exergue.source.list.ListCodes;
import exergue.source.list.ListColumn;
import exergue.source.list.ListPlan;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Cells to what they say: signs answered, words translated. Rows come in order, since some repeat what stands above them. */
final class CellReader {

    private static final Set<ReadingFault> NO_FIGURE = Set.of(ReadingFault.EMPTY_READING, ReadingFault.UNCLEAR_ABSENCE);

    /** What a spreadsheet shows for a formula that has gone wrong (#N/A, #REF!, #DIV/0!, in its language), or makes of a long number. */
    private static final Pattern OF_SPREADSHEET = Pattern.compile("#[\\p{Lu}/0]{2,12}[!?]?|\\d+([.,]\\d+)?E[+-]\\d+");

    /** What it makes of 2-6 and the like. */
    private static final Pattern DAY = Pattern.compile("\\d{1,2}(-|\\. ?)\\p{L}{3,4}\\.?");

    private final ListPlan plan;
    private final List<Column> columns;
    private final List<String> headings;
    private final Map<Integer, String> above = new HashMap<>();
    private final Map<List<String>, List<SheetCell>> unanswered = new LinkedHashMap<>();

    CellReader(ListPlan plan, List<Column> columns, List<String> headings) {
        this.plan = plan;
        this.headings = headings;
        this.columns = columns;
    }

    /** By what they are, in the order of the columns; only what says something. */
    Map<ColumnContent, List<Taken>> row(SheetRow row) {
        Map<ColumnContent, List<Taken>> taken = new EnumMap<>(ColumnContent.class);
        for (Column column : columns) {
            SheetCell cell = row.cell(column.index());
            text(column, cell).map(text -> withSecond(text, column, row)).ifPresent(text -> taken.computeIfAbsent(column.holds(), key -> new ArrayList<>())
                    .add(new Taken(text, Spot.of(cell, column.heading()), column.said(), true)));
        }
        plan.everyRow().forEach((word, value) -> {
            ColumnContent content = ColumnContent.of(word).orElseThrow();
            taken.computeIfAbsent(content, key -> new ArrayList<>(List.of(
                    new Taken(value.value(), Spot.of(row), ListColumn.of(content, value.place()), false))));
        });
        return taken;
    }

    /** Two diameters of a flan that is not round stand in two columns in many lists. */
    private String withSecond(String text, Column column, SheetRow row) {
        String second = column.said().hand().secondIn().map(heading -> headings.indexOf(heading.value())).filter(index -> index >= 0)
                .map(index -> row.cell(index).text()).orElse("");
        return second.codePoints().anyMatch(Character::isDigit) && text.codePoints().anyMatch(Character::isDigit) ? text + " x " + second : text;
    }

    /** A further cell of the row, such as that of who measured, if it says something. */
    Optional<String> plain(Column column, SheetRow row) {
        SheetCell cell = row.cell(column.index());
        return cell.isEmpty() ? Optional.empty() : Optional.of(column.translated(cell.text()));
    }

    private Optional<String> text(Column column, SheetCell cell) {
        if (column.holds() == ColumnContent.LEFT_OUT) {
            return Optional.empty();
        }
        String sign = cell.isEmpty() ? ListPlan.EMPTY : cell.text();
        Optional<String> answer = column.answer(sign, plan);
        if (answer.isPresent()) {
            return answered(answer.get(), column);
        }
        boolean reading = column.holds().kind().isPresent();
        String text = column.translated(cell.text());
        if (isSign(column.holds(), text)) {
            boolean asked = (reading || !cell.isEmpty()) && !plan.everyRow().containsKey(column.holds().word());
            if (asked) {
                unanswered.computeIfAbsent(List.of(sign, column.heading()), key -> new ArrayList<>()).add(cell);
            }
            above.remove(column.index());
            return Optional.empty();
        }
        above.put(column.index(), text);
        return Optional.of(text);
    }

    /** What a sign means; a sign below it that means “as above” repeats that too. */
    private Optional<String> answered(String answer, Column column) {
        if (!answer.equals(ListPlan.AS_ABOVE)) {
            above.remove(column.index());
            if (!answer.equals(ListPlan.LEFT_OUT) && column.holds().kind().isPresent()) {
                above.put(column.index(), answer);
            }
        }
        return Optional.ofNullable(above.get(column.index()));
    }

    /** Whether a spreadsheet may have made the cell of something else. */
    static boolean isOfSpreadsheet(String text) {
        return OF_SPREADSHEET.matcher(text).matches() || DAY.matcher(text).matches();
    }

    /** Whether a cell has no figure, or no words, and nothing that could be meant for one. */
    static boolean isSign(ColumnContent holds, String text) {
        if (OF_SPREADSHEET.matcher(text).matches()) {
            return true;
        }
        if (holds.kind().isEmpty()) {
            return text.codePoints().noneMatch(Character::isLetterOrDigit);
        }
        boolean words = text.codePoints().anyMatch(Character::isLetter) && text.codePoints().noneMatch(Character::isDigit);
        return ReadingParser.parse(holds.kind().get(), text, Convention.UNDECLARED) instanceof Parsed.Refused refused
                && (words || NO_FIGURE.contains(refused.remark().fault()) || DAY.matcher(text).matches());
    }

    /** One finding for each sign, whatever the number of its cells. */
    List<Finding> unanswered() {
        Map<String, Map<String, List<SheetCell>>> bySign = new LinkedHashMap<>();
        unanswered.forEach((key, cells) -> bySign.computeIfAbsent(key.get(0), sign -> new LinkedHashMap<>()).put(key.get(1), cells));
        return bySign.entrySet().stream().map(entry -> unanswered(entry.getKey(), entry.getValue())).toList();
    }

    private static Finding unanswered(String sign, Map<String, List<SheetCell>> byHeading) {
        List<String> where = new ArrayList<>();
        byHeading.forEach((heading, cells) -> where.add("column “" + heading + "” " + RowFindings.rows(cells.stream()
                .map(SheetCell::row).toList())));
        Place first = byHeading.values().iterator().next().get(0).place();
        String key = EntryNode.plainOrQuoted(sign);
        boolean spoilt = isOfSpreadsheet(sign);
        return Finding.of(ListCodes.SIGN_UNANSWERED, first, "",
                (sign.equals(ListPlan.EMPTY) ? "Empty cells stand" : "“" + sign + "” stands") + " where a figure or words should: "
                        + String.join("; ", where) + ".",
                (spoilt ? "If a spreadsheet has made it of something else, mend it there, with the column formatted as text, and save the list again. "
                        + "Or say" : "Say") + " once what it means, under signs: in the file of the list, such as " + key
                        + ": 'missing: not recorded in the list'; or not applicable: why, illegible: why, left out. Where it means something else "
                        + "in one column, say it there" + (!spoilt && !sign.equals(ListPlan.EMPTY) && sign.codePoints().anyMatch(Character::isLetter)
                        ? "; if it stands for a figure, under words: of the column." : "."));
    }
}
