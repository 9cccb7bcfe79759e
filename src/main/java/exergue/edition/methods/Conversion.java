package exergue.edition.methods;

import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.measure.Unit;
import java.util.Comparator;
import java.util.List;

/**
 * Printed figures recorded in other units than the book's.
 *
 * @param units in which they are recorded, each once: several for compound readings such as 2 dwt 11 gr
 * @param coins how many coins
 */
public record Conversion(Kind kind, List<Unit> units, int coins) {

    private record Recorded(Kind kind, List<Unit> units) {
        private String key() {
            return String.join(" ", units.stream().map(Unit::id).toList());
        }
    }

    static List<Conversion> of(List<Counted> coins) {
        Counts<Recorded> counts = new Counts<>(Comparator.comparing(Recorded::kind).thenComparing(Recorded::key));
        for (Counted coin : coins) {
            for (Kind kind : coin.chosen().keySet()) {
                coin.figure(kind).filter(Reading.Read::converted)
                        .ifPresent(read -> counts.add(new Recorded(kind, foreignUnits(read))));
            }
        }
        return counts.commonestFirst().stream()
                .map(count -> new Conversion(count.thing().kind(), count.thing().units(), count.times()))
                .sorted(Comparator.comparing(Conversion::kind)).toList();
    }

    private static List<Unit> foreignUnits(Reading.Read read) {
        return read.asRecorded().stream().map(quantity -> quantity.unit()).filter(unit -> !unit.isNormal())
                .distinct().toList();
    }
}
