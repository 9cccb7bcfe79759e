package exergue.study;

import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Coin;
import exergue.model.Measurement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Two conventions and the coins that were read under both.
 *
 * @param weights   of each coin with a weight from both
 * @param diameters of each coin with a diameter from both; of a diameter with two figures their mean
 */
public record TwoHands(Convention first, Convention second, List<Differences.Point> weights,
                       List<Differences.Point> diameters, AxisAgreement axes) {

    public TwoHands {
        weights = List.copyOf(weights);
        diameters = List.copyOf(diameters);
    }

    /** Compares two hands over some coins. Figures that say of themselves that they are not exact are
     * left out. */
    public static TwoHands of(Convention first, Convention second, List<Coin> coins) {
        AxisAgreement axes = new AxisAgreement(0, 0, 0);
        for (Coin coin : coins) {
            Optional<Double> one = figure(coin, first, Kind.AXIS);
            Optional<Double> other = figure(coin, second, Kind.AXIS);
            if (one.isPresent() && other.isPresent()) {
                axes = axes.and(one.get(), other.get());
            }
        }
        return new TwoHands(first, second, points(first, second, coins, Kind.WEIGHT),
                points(first, second, coins, Kind.DIAMETER), axes);
    }

    /** True where no coin has two figures of one kind. */
    public boolean isEmpty() {
        return weights.isEmpty() && diameters.isEmpty() && axes.n() == 0;
    }

    /** Empty for fewer than three coins. */
    public Optional<Differences> weight() {
        return weights.size() < Differences.FEWEST ? Optional.empty() : Optional.of(Differences.of(weights));
    }

    /** Empty for fewer than three coins. */
    public Optional<Differences> diameter() {
        return diameters.size() < Differences.FEWEST ? Optional.empty() : Optional.of(Differences.of(diameters));
    }

    /** True where both say in which direction they took diameters, and not in the same. */
    public boolean inDifferentDirections() {
        Convention.Direction one = first.sizing().direction();
        Convention.Direction other = second.sizing().direction();
        return one != other && one != Convention.Direction.NOT_SAID && other != Convention.Direction.NOT_SAID;
    }

    private static List<Differences.Point> points(Convention first, Convention second, List<Coin> coins, Kind kind) {
        List<Differences.Point> points = new ArrayList<>();
        for (Coin coin : coins) {
            Optional<Double> one = figure(coin, first, kind);
            Optional<Double> other = figure(coin, second, kind);
            if (one.isPresent() && other.isPresent()) {
                points.add(new Differences.Point(coin.id().value(), (one.get() + other.get()) / 2,
                        one.get() - other.get()));
            }
        }
        return points;
    }

    private static Optional<Double> figure(Coin coin, Convention convention, Kind kind) {
        return Stream.concat(coin.measured().stream(), coin.alsoMeasured().stream())
                .filter(measurement -> measurement.by().value().equals(convention.id()))
                .flatMap(measurement -> read(measurement, kind).stream())
                .findFirst().map(Figure::of);
    }

    private static Optional<Reading.Read> read(Measurement measurement, Kind kind) {
        return measurement.reading(kind).map(written -> written.value())
                .filter(Reading.Read.class::isInstance).map(Reading.Read.class::cast)
                .filter(read -> read.qualifier() == Reading.Qualifier.NONE);
    }
}
