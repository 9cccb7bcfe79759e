package exergue.edition.methods;

import exergue.measure.Axis;
import exergue.measure.Kind;
import exergue.model.Making;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What there is to say of die-axes.
 *
 * @param halfHours coins whose axis falls on a half hour, which is printed
 * @param between   coins whose axis falls elsewhere between two hours, and is printed as the nearer
 * @param unstruck  for cast and for machine-struck coins: how many have an axis, and whether all have the same
 */
public record AxisTally(int halfHours, int between, List<Unstruck> unstruck) {
    public AxisTally {
        unstruck = List.copyOf(unstruck);
    }


    /** @param allAt the clock hour that all of at least two coins have */
    public record Unstruck(Making making, int coins, Optional<BigDecimal> allAt) { }

    static AxisTally of(List<Counted> coins) {
        int halfHours = 0;
        int between = 0;
        for (Counted coin : coins) {
            Optional<BigDecimal> hours = coin.figure(Kind.AXIS).map(axis -> axis.first().value());
            boolean half = hours.filter(Axis::midway).isPresent();
            boolean whole = hours.filter(hour -> hour.stripTrailingZeros().scale() <= 0).isPresent();
            halfHours += half ? 1 : 0;
            between += hours.isPresent() && !half && !whole ? 1 : 0;
        }
        List<Unstruck> unstruck = new ArrayList<>();
        for (Making making : List.of(Making.CAST, Making.MACHINE_STRUCK)) {
            List<BigDecimal> hours = coins.stream().filter(coin -> coin.type().making().value() == making)
                    .flatMap(coin -> coin.figure(Kind.AXIS).stream())
                    .map(axis -> axis.first().value().stripTrailingZeros()).toList();
            if (!hours.isEmpty()) {
                boolean alike = hours.size() > 1 && hours.stream().distinct().count() == 1;
                unstruck.add(new Unstruck(making, hours.size(), alike ? Optional.of(hours.get(0)) : Optional.empty()));
            }
        }
        return new AxisTally(halfHours, between, List.copyOf(unstruck));
    }
}
