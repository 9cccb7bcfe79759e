package exergue.exchange.list;

import exergue.finding.Finding;
import exergue.finding.Findings;
import java.util.Map;

/** Findings on entries that come from a list, each with its row. */
public final class RowsTold {

    private RowsTold() { }

    /** @param rows of the sheet, by the paths of the entries; @param list its name */
    public static Findings in(Findings findings, Map<String, Integer> rows, String list) {
        return Findings.of(findings.all().stream().map(one -> rows.containsKey(one.place().file()) ? told(one, rows, list) : one).toList(),
                findings.excused());
    }

    private static Finding told(Finding one, Map<String, Integer> rows, String list) {
        return new Finding(one.code(), one.place(), one.path(), one.what() + " (Row " + rows.get(one.place().file()) + " of " + list + ".)",
                one.remedy(), one.related(), one.edit());
    }
}
