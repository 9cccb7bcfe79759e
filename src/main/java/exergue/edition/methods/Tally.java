package exergue.edition.methods;

import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.HouseStyle;
import exergue.model.ReadingChoice;
import exergue.study.Agreement;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Everything the methods statement counts, over the coins of a book. It does not depend on the order of the entries.
 *
 * @param coins       in the book
 * @param figures     printed, by kind; only kinds of the house's measurement line
 * @param hands       conventions under which coins were read: the main one first, then those with most printed figures
 * @param conversions printed figures that were recorded in other units
 * @param rounded     printed figures that stand with fewer decimals than recorded, by kind; conversions not among them
 * @param absences    what is not there and why
 * @param damage      coins whose weight has changed
 * @param flans       figures for flans that are not round
 * @param axes        what there is to say of die-axes
 * @param readTwice   coins with figures from more than one convention
 * @param agreement   of the main hand with each other, where enough coins were read by both
 * @param qualified   printed figures that the record itself qualifies
 * @param otherHand   printed figures from any but the main convention
 * @param densities   printed densities, and what alloys they were held against
 * @param style       of the house
 */
public record Tally(int coins, Map<Kind, Integer> figures, List<Hand> hands, List<Conversion> conversions,
                    Map<Kind, Integer> rounded, List<Absence> absences, DamageTally damage, FlanTally flans,
                    AxisTally axes, int readTwice, Agreement agreement, List<Count<Reading.Qualifier>> qualified,
                    int otherHand, DensityTally densities, HouseStyle style) {
    public Tally {
        figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
        hands = List.copyOf(hands);
        conversions = List.copyOf(conversions);
        rounded = Collections.unmodifiableMap(new LinkedHashMap<>(rounded));
        absences = List.copyOf(absences);
        qualified = List.copyOf(qualified);
    }


    /** So many times this. */
    public record Count<T>(T thing, int times) { }

    public static Tally of(List<Counted> coins, Catalogue catalogue) {
        HouseStyle style = catalogue.style();
        List<Hand> hands = Hand.of(coins, catalogue);
        return new Tally(coins.size(), figures(coins), hands, Conversion.of(coins), rounded(coins, style),
                Absence.of(coins, style.printed()), DamageTally.of(coins), FlanTally.of(coins), AxisTally.of(coins),
                (int) coins.stream().filter(Tally::isReadTwice).count(), agreement(catalogue, hands),
                qualified(coins),
                hands.stream().filter(hand -> !hand.main()).mapToInt(Hand::figuresPrinted).sum(),
                DensityTally.of(coins), style);
    }

    public int figures(Kind kind) {
        return figures.getOrDefault(kind, 0);
    }

    /** Coins of which a figure of this kind is in that state. */
    public int absent(Kind kind, ReadingChoice.Status status) {
        return absences.stream().filter(a -> a.kind() == kind && a.status() == status)
                .mapToInt(Absence::coins).sum();
    }

    public boolean anyAbsent(ReadingChoice.Status status) {
        return absences.stream().anyMatch(absence -> absence.status() == status);
    }

    /** Titles of the conventions the house prefers, in its order, as far as they were used at all. */
    public List<String> preferred() {
        return style.prefer().stream().flatMap(id -> hands.stream()
                .filter(hand -> hand.convention().id().equals(id.value()))).map(hand -> hand.convention().title()).toList();
    }

    private static Agreement agreement(Catalogue catalogue, List<Hand> hands) {
        return new Agreement(hands.stream().filter(Hand::main)
                .flatMap(main -> Agreement.of(catalogue, main.convention().id()).pairs().stream())
                .filter(pair -> pair.weight().isPresent() || pair.diameter().isPresent()).toList());
    }

    private static Map<Kind, Integer> figures(List<Counted> coins) {
        Map<Kind, Integer> figures = new EnumMap<>(Kind.class);
        coins.forEach(coin -> coin.chosen().keySet().forEach(
                kind -> figures.merge(kind, coin.figure(kind).isPresent() ? 1 : 0, Integer::sum)));
        return Collections.unmodifiableMap(figures);
    }

    private static Map<Kind, Integer> rounded(List<Counted> coins, HouseStyle style) {
        Map<Kind, Integer> rounded = new EnumMap<>(Kind.class);
        for (Counted coin : coins) {
            for (Kind kind : coin.chosen().keySet()) {
                if (kind != Kind.AXIS && coin.figure(kind).filter(read -> isRounded(read, style)).isPresent()) {
                    rounded.merge(kind, 1, Integer::sum);
                }
            }
        }
        return Collections.unmodifiableMap(rounded);
    }

    private static boolean isRounded(Reading.Read read, HouseStyle style) {
        int decimals = style.form().decimals(read.kind());
        return !read.converted() && !read.weighedInWater() && read.normal().stream()
                .anyMatch(quantity -> quantity.value().scale() > decimals);
    }

    private static boolean isReadTwice(Counted counted) {
        long hands = Stream
                .concat(counted.coin().measured().stream(), counted.coin().alsoMeasured().stream())
                .filter(block -> block.readings().values().stream()
                        .anyMatch(reading -> reading.value() instanceof Reading.Read))
                .map(block -> block.by().value()).distinct().count();
        return hands > 1;
    }

    private static List<Count<Reading.Qualifier>> qualified(List<Counted> coins) {
        Counts<Reading.Qualifier> counts = new Counts<>(Enum::compareTo);
        for (Counted coin : coins) {
            for (Kind kind : coin.chosen().keySet()) {
                coin.figure(kind).map(Reading.Read::qualifier).filter(q -> q != Reading.Qualifier.NONE)
                        .ifPresent(counts::add);
            }
        }
        return counts.commonestFirst();
    }
}
