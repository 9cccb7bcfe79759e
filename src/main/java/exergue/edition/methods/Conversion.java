package exergue.edition.methods;

import exergue.measure.Kind;
import exergue.measure.PrintForm;
import exergue.measure.Ratio;
import exergue.measure.Reading;
import exergue.measure.SizeScale;
import exergue.measure.Unit;
import exergue.measure.Units;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Printed figures recorded in other units than the book's.
 *
 * @param units in which they are recorded, each once: several for compound readings such as 2 dwt 11 gr; empty for a
 *              numbered scale; {@link Units#ARROW} for axes that are drawn
 * @param scale the numbered scale of sizes in which they are recorded
 * @param coins how many coins
 */
public record Conversion(Kind kind, List<Unit> units, Optional<SizeScale> scale, int coins) {
    public Conversion {
        units = List.copyOf(units);
    }


    /** True for die-axes drawn as arrows, which are in no unit. */
    public boolean isDrawn() {
        return units.contains(Units.ARROW);
    }

    private record Recorded(Kind kind, List<Unit> units, Optional<SizeScale> scale) {
        Recorded {
            units = List.copyOf(units);
        }

        private String key() {
            return scale.map(SizeScale::id).orElse(String.join(" ", units.stream().map(Unit::id).toList()));
        }
    }

    /** How many normal units one of these is: "0.06479891", "1000/443.296". */
    public static String factor(Unit unit, PrintForm form) {
        Ratio factor = unit.factor();
        String over = form.decimal(factor.numerator());
        return factor.denominator().compareTo(BigDecimal.ONE) == 0 ? over
                : over + "/" + form.decimal(factor.denominator());
    }

    static List<Conversion> of(List<Counted> coins) {
        Counts<Recorded> counts = new Counts<>(Comparator.comparing(Recorded::kind).thenComparing(Recorded::key));
        for (Counted coin : coins) {
            for (Kind kind : coin.chosen().keySet()) {
                coin.figure(kind).filter(Reading.Read::converted)
                        .ifPresent(read -> counts.add(recorded(kind, read)));
            }
        }
        return counts.commonestFirst().stream()
                .map(count -> new Conversion(count.thing().kind(), count.thing().units(), count.thing().scale(),
                        count.times()))
                .sorted(Comparator.comparing(Conversion::kind)).toList();
    }

    private static Recorded recorded(Kind kind, Reading.Read read) {
        List<Unit> units = foreignUnits(read);
        Optional<SizeScale> scale = SizeScale.of(units.get(0));
        return new Recorded(kind, scale.isPresent() ? List.of() : units, scale);
    }

    private static List<Unit> foreignUnits(Reading.Read read) {
        return read.asRecorded().stream().map(quantity -> quantity.unit()).filter(unit -> !unit.isNormal())
                .distinct().toList();
    }
}
