package exergue.source;

import exergue.measure.GrAmbiguity;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Limits;
import exergue.model.ReadingChoice;
import exergue.model.Type;
import exergue.model.Written;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What a coin ought to weigh: as another hand weighed it, else by the limits its type declares, else as the other coins of its type do, else as those of
 * its mint, denomination and metal. Exact arithmetic, the same whatever the order of the entries.
 */
final class UsualWeights {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private final Map<String, Type> types = new HashMap<>();
    private final List<Coin> coins;
    private final ReadingChoice choice;

    UsualWeights(Catalogue catalogue) {
        this.coins = catalogue.coins();
        this.choice = ReadingChoice.of(catalogue.style());
        catalogue.types().forEach(type -> types.putIfAbsent(type.id().value(), type));
    }

    /**
     * In grams; both the same for a median.
     *
     * @param words where it comes from, to follow "likelier:"
     */
    record Weight(BigDecimal least, BigDecimal greatest, String words) {

        /** A third to three times as much is near; grains and grammes are fifteen times apart. */
        private static final BigDecimal NEAR = BigDecimal.valueOf(3);

        String verdict(GrAmbiguity both) {
            BigDecimal grains = times(both.ifGrains());
            BigDecimal grammes = times(both.ifGrammes());
            if (grains.min(grammes).compareTo(NEAR) > 0) {
                return "Neither is likely: " + words + ".";
            }
            return (grains.compareTo(grammes) < 0 ? "Grains are likelier: " : "Grammes are likelier: ") + words + ".";
        }

        /** How many times too heavy or too light; 1 between the limits. */
        private BigDecimal times(Reading.Read read) {
            BigDecimal weight = read.first().value();
            return weight.divide(greatest, MathContext.DECIMAL64).max(least.divide(weight, MathContext.DECIMAL64))
                    .max(BigDecimal.ONE);
        }
    }

    Optional<Weight> of(Coin coin) {
        return ownWeight(coin).or(() -> ofType(coin));
    }

    /** Another hand's figure for the very same coin. */
    private static Optional<Weight> ownWeight(Coin coin) {
        return Stream.concat(coin.measured().stream(), coin.alsoMeasured().stream())
                .flatMap(block -> block.reading(Kind.WEIGHT).stream().map(Written::value)
                        .filter(Reading.Read.class::isInstance).map(Reading.Read.class::cast)
                        .map(read -> new Weight(read.first().value(), read.first().value(), "the coin weighs “" + read.recorded()
                                + "” under “" + block.by() + "”")))
                .findFirst();
    }

    private Optional<Weight> ofType(Coin coin) {
        return Optional.ofNullable(types.get(coin.type().value())).flatMap(type -> limits(type)
                .or(() -> median(coin, type, other -> other.equals(type), " of its type"))
                .or(() -> median(coin, type, other -> sameDenomination(other, type), " of its mint, denomination and metal")));
    }

    private static Optional<Weight> limits(Type type) {
        Optional<Limits.Span> span = type.limits().map(limits -> limits.spans().get(Kind.WEIGHT));
        if (span.isPresent() && span.get().from().value() instanceof Reading.Read from
                && span.get().to().value() instanceof Reading.Read to
                && from.first().value().compareTo(to.first().value()) <= 0) {
            return Optional.of(new Weight(from.first().value(), to.first().value(), "the type “" + type.id()
                    + "” expects “" + from.recorded() + "” to “" + to.recorded() + "”"));
        }
        return Optional.empty();
    }

    private Optional<Weight> median(Coin coin, Type type, Predicate<Type> alike, String group) {
        List<BigDecimal> weights = coins.stream()
                .filter(other -> !other.id().value().equals(coin.id().value()) && other.weightInStatistics())
                .filter(other -> types.containsKey(other.type().value()) && alike.test(types.get(other.type().value())))
                .flatMap(other -> choice.choose(other, type, Kind.WEIGHT).figure().stream())
                .filter(read -> read.qualifier() == Reading.Qualifier.NONE)
                .map(read -> read.first().value()).sorted().toList();
        if (weights.isEmpty()) {
            return Optional.empty();
        }
        int half = weights.size() / 2;
        BigDecimal middle = weights.get(half).add(weights.get((weights.size() - 1) / 2)).divide(TWO, MathContext.DECIMAL64);
        String many = weights.size() == 1 ? "the other coin" + group + " weighs " : "the " + weights.size()
                + " other coins" + group + " weigh ";
        return Optional.of(new Weight(middle, middle, many + grams(middle) + (weights.size() == 1 ? "" : " (median)")));
    }

    private static boolean sameDenomination(Type one, Type other) {
        return one.mint().value().equals(other.mint().value()) && one.metal().value().equals(other.metal().value())
                && one.denomination().value().equals(other.denomination().value());
    }

    private static String grams(BigDecimal weight) {
        return weight.setScale(2, RoundingMode.HALF_EVEN).toPlainString() + " g";
    }
}
