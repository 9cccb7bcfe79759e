package exergue.cli;

import exergue.measure.Unit;
import exergue.measure.Units;
import exergue.measure.Working;
import java.util.Locale;

/** Every unit with its exact factor and the publication that fixes it. */
final class UnitTable {

    private UnitTable() { }

    static String text() {
        StringBuilder table = new StringBuilder();
        for (Unit unit : Units.all()) {
            table.append(String.format(Locale.ROOT, "%-26s%-12s%s\n", unit.name(), unit.symbol(), Working.factor(unit)))
                    .append("    ").append(unit.source().noted()).append('\n');
        }
        return table.toString();
    }
}
