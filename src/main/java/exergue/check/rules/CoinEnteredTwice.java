package exergue.check.rules;

import exergue.check.CoinOfType;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.ReadingChoice;
import exergue.model.Written;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Two entries of one type have the same weight, diameter and axis, and nothing tells them apart: other dies, another number in
 * the same collection, another find number. The coins of a type are looked at in order of weight, so that each is held only
 * against those as heavy. */
public final class CoinEnteredTwice implements Rule {

    static final Code CODE = new Code("coin-entered-twice", Severity.NOTE, "Two entries may be of one coin",
            "A coin that was in two collections, or in a sale and then in a museum, is easily catalogued twice, and then counts twice in "
                    + "every mean. Two coins of one type that agree in weight to the hundredth of a gram, in diameter to a fifth of a millimetre "
                    + "and in die-axis are worth a look; where both are of the same two dies, weights may be three hundredths apart, as two "
                    + "balances are. In a large issue, some will agree by chance. Coins whose diameters are given in whole millimetres are "
                    + "not compared, since too many would agree.",
            """
                    # coins/lk-0042.yaml and coins/lk-0043.yaml
                    measured: {by: bench, weight: 3.87 g, diameter: 18.2 mm, axis: 6 h}
                    """,
            """
                    # coins/lk-0042.yaml, with the history of both; coins/lk-0043.yaml is deleted
                    measured: {by: bench, weight: 3.87 g, diameter: 18.2 mm, axis: 6 h}
                    """);

    private static final BigDecimal SAME_WEIGHT = new BigDecimal("0.01");
    /** For coins of the same two dies. A choice, no source. */
    private static final BigDecimal NEAR_WEIGHT = new BigDecimal("0.03");
    private static final BigDecimal SAME_DIAMETER = new BigDecimal("0.2");

    private record Measured(Coin coin, BigDecimal weight, BigDecimal diameter, BigDecimal axis) { }

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        ReadingChoice choice = ReadingChoice.of(catalogue.style());
        Map<String, List<Measured>> byType = new LinkedHashMap<>();
        for (CoinOfType pair : CoinOfType.all(catalogue)) {
            measured(pair, choice).ifPresent(coin ->
                    byType.computeIfAbsent(pair.type().id().value(), any -> new ArrayList<>()).add(coin));
        }
        List<Finding> faults = new ArrayList<>();
        byType.values().forEach(coins -> look(coins, faults));
        return faults;
    }

    private static Optional<Measured> measured(CoinOfType pair, ReadingChoice choice) {
        Function<Kind, Optional<BigDecimal>> figure = kind -> choice.choose(pair.coin(), pair.type(), kind).figure()
                .filter(read -> read.normal().size() == 1).map(Reading.Read::first).map(quantity -> quantity.value());
        return figure.apply(Kind.WEIGHT).filter(weight -> weight.scale() >= 2).flatMap(weight -> figure.apply(Kind.DIAMETER)
                .filter(diameter -> diameter.scale() >= 1).flatMap(diameter -> figure.apply(Kind.AXIS).map(axis -> new Measured(pair.coin(), weight, diameter, axis))));
    }

    private static void look(List<Measured> coins, List<Finding> faults) {
        coins.sort(Comparator.comparing(Measured::weight).thenComparing(one -> one.coin().id().place()));
        for (int i = 0; i < coins.size(); i++) {
            for (int j = i + 1; j < coins.size() && isNear(coins.get(i).weight(), coins.get(j).weight(), NEAR_WEIGHT); j++) {
                if (mayBeOne(coins.get(i), coins.get(j))) {
                    faults.add(fault(coins.get(i).coin(), coins.get(j).coin()));
                    break;
                }
            }
        }
    }

    private static boolean isNear(BigDecimal one, BigDecimal other, BigDecimal step) {
        return one.subtract(other).abs().compareTo(step) <= 0;
    }

    private static boolean mayBeOne(Measured one, Measured other) {
        BigDecimal apart = haveTheSameDies(one.coin(), other.coin()) ? NEAR_WEIGHT : SAME_WEIGHT;
        return isNear(one.weight(), other.weight(), apart) && one.axis().compareTo(other.axis()) == 0
                && isNear(one.diameter(), other.diameter(), SAME_DIAMETER)
                && !differ(one.coin(), other.coin(), coin -> coin.dies().flatMap(Coin.Dies::obverse))
                && !differ(one.coin(), other.coin(), coin -> coin.dies().flatMap(Coin.Dies::reverse))
                && !differ(one.coin(), other.coin(), coin -> coin.find().flatMap(Coin.Find::number))
                && !haveNumbersOfOneCollection(one.coin(), other.coin());
    }

    private static boolean haveTheSameDies(Coin one, Coin other) {
        return one.dies().isPresent() && other.dies().isPresent()
                && isSame(one.dies().get().obverse(), other.dies().get().obverse())
                && isSame(one.dies().get().reverse(), other.dies().get().reverse());
    }

    private static boolean isSame(Optional<Written<String>> one, Optional<Written<String>> other) {
        return one.isPresent() && other.isPresent() && one.get().value().equals(other.get().value());
    }

    private static boolean differ(Coin one, Coin other, Function<Coin, Optional<Written<String>>> mark) {
        Optional<Written<String>> its = mark.apply(one);
        Optional<Written<String>> others = mark.apply(other);
        return its.isPresent() && others.isPresent() && !its.get().value().equals(others.get().value());
    }

    private static boolean haveNumbersOfOneCollection(Coin one, Coin other) {
        return one.holding().isPresent() && other.holding().isPresent()
                && one.holding().get().collection().value().equals(other.holding().get().collection().value())
                && differ(one, other, coin -> coin.holding().flatMap(Coin.Holding::number));
    }

    private static Finding fault(Coin one, Coin other) {
        boolean first = one.id().place().compareTo(other.id().place()) < 0;
        Coin before = first ? one : other;
        Coin after = first ? other : one;
        return Finding.of(CODE, after.id().place(), "measured", "“" + before.id() + "” and “" + after.id()
                + "” are of one type and agree in weight, diameter and die-axis.",
                "Compare the coins or their photographs. If they are one coin, keep one entry with the history of both; if not, name "
                        + "what tells them apart, such as their dies or numbers, or excuse the entry.")
                .withRelated(before.id().place(), "the other coin");
    }
}
