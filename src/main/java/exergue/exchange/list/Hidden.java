package exergue.exchange.list;

import java.util.ArrayList;
import java.util.List;

/** A list as its lines may be shown beside findings: cells that may name the very place of a find are dotted out. */
final class Hidden {

    private Hidden() { }

    /** @param columns of find-spots, by index */
    static String in(Sheet sheet, List<Integer> columns) {
        List<String> lines = new ArrayList<>(List.of(sheet.shown().split("\n", -1)));
        for (SheetRow row : sheet.rows()) {
            for (int column : columns) {
                SheetCell cell = row.cell(column);
                if (!cell.isEmpty()) {
                    hide(cell, lines);
                }
            }
        }
        return String.join("\n", lines);
    }

    private static void hide(SheetCell cell, List<String> lines) {
        int first = cell.place().line() - 1;
        int breaks = (int) cell.text().chars().filter(c -> c == '\n').count();
        for (int at = first + 1; at <= Math.min(first + breaks, lines.size() - 1); at++) {
            lines.set(at, dots(lines.get(at)));
        }
        String line = lines.get(first);
        int from = line.offsetByCodePoints(0, cell.place().column() - 1);
        long doubled = cell.text().chars().filter(c -> c == '"').count();
        int to = breaks > 0 ? line.length() : Math.min(line.length(), from + cell.text().length() + (int) doubled);
        lines.set(first, line.substring(0, from) + dots(line.substring(from, to)) + line.substring(to));
    }

    static String dots(String text) {
        return "·".repeat(text.codePointCount(0, text.length()));
    }
}
