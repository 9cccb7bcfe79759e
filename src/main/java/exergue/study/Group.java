package exergue.study;

import exergue.measure.Kind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The figures of coins that should be alike, in g or mm. Grows while the catalogue is gone through. */
final class Group {

    /** With fewer figures the middle says too little. */
    private static final int FEWEST = 5;

    /** Least spread of the logarithms: about one and a half per cent for weights. A choice, no source. */
    private static final double WEIGHT_FLOOR = 0.015;
    /** For diameters three per cent, as flans are less even than weights. A choice, no source. */
    private static final double DIAMETER_FLOOR = 0.03;
    /** Half of what figures are usually rounded to, which matters for small coins: 0.01 g and 1 mm. */
    private static final double WEIGHT_ROUNDING = 0.005;
    private static final double DIAMETER_ROUNDING = 0.5;

    private final Kind kind;
    private final String name;
    private final List<Double> figures = new ArrayList<>();
    private Optional<Expected> expected = Optional.empty();

    /** @param name how a message speaks of its coins, after their number: "coins of its type" */
    Group(Kind kind, String name) {
        this.kind = kind;
        this.name = name;
    }

    void add(double figure) {
        figures.add(figure);
        expected = Optional.empty();
    }

    /** What a coin of this group is expected to have; empty for a small group. Reckoned once, not for every coin. */
    Optional<Expected> expected() {
        if (figures.size() >= FEWEST && expected.isEmpty()) {
            expected = Optional.of(reckon());
        }
        return expected;
    }

    private Expected reckon() {
        Spread logs = Spread.of(figures.stream().map(StrictMath::log).toList());
        double median = StrictMath.exp(logs.median());
        boolean weight = kind == Kind.WEIGHT;
        double rounding = (weight ? WEIGHT_ROUNDING : DIAMETER_ROUNDING) / median;
        double reach = logs.atLeast(Math.max(weight ? WEIGHT_FLOOR : DIAMETER_FLOOR, rounding)).reach();
        double from = median * StrictMath.exp(-reach);
        double to = median * StrictMath.exp(reach);
        int decimals = weight ? 2 : 1;
        String unit = weight ? " g" : " mm";
        String words = "the " + figures.size() + " " + name + " have a median of " + Figure.words(median, decimals) + unit
                + ", and " + within(from, to, decimals) + unit + " would be usual among them";
        return new Expected(weight ? StudyCodes.WEIGHT_FAR_OFF : StudyCodes.DIAMETER_FAR_OFF, from, to, words);
    }

    /** Rounded inwards, so that no figure that is found to lie outside stands at the limit that is told. */
    private static String within(double from, double to, int decimals) {
        BigDecimal least = BigDecimal.valueOf(from).setScale(decimals, RoundingMode.CEILING);
        BigDecimal most = BigDecimal.valueOf(to).setScale(decimals, RoundingMode.FLOOR);
        return least.compareTo(most) > 0 ? within(from, to, decimals + 1) : least.toPlainString() + "–" + most.toPlainString();
    }
}
