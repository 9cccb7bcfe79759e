package exergue.model;

import java.util.List;

/**
 * Coins of other finds by period: what a site is compared with. Only the proportions count, so that a list published per thousand
 * can be entered as it stands.
 *
 * @param title   as printed: "nine sites of the coast"
 * @param periods in the order of the file
 * @param others  coins of periods that the catalogue has not
 */
public record FindsElsewhere(Written<String> title, List<Period> periods, Written<Integer> others) {

    public FindsElsewhere {
        periods = List.copyOf(periods);
    }

    /** @param ruler id of the ruler or period, as in rulers.yaml; @param coins found */
    public record Period(Written<String> ruler, Written<Integer> coins) { }

    /** Coins of all periods. */
    public int all() {
        return others.value() + periods.stream().mapToInt(period -> period.coins().value()).sum();
    }

    /** Coins of one period; none where it is not listed. */
    public int of(String ruler) {
        return periods.stream().filter(period -> period.ruler().value().equals(ruler)).mapToInt(period -> period.coins().value()).sum();
    }
}
