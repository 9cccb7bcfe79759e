package exergue.edition.methods;

import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Damage;
import exergue.model.Measurement;
import exergue.model.ReadingChoice;
import exergue.model.Type;
import exergue.model.Work;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * One convention as it was used.
 *
 * @param work     the published work the figures come from
 * @param main     true for the one whose figures carry no sign
 * @param coins    of which it has any figure, printed or not
 * @param uncleaned how many of these coins had not been cleaned, by their own entries
 * @param printed  figures of it that are printed, by kind
 */
public record Hand(Convention convention, Optional<Work> work, boolean main, int coins, int uncleaned,
                   Map<Kind, Integer> printed) {

    private static final Comparator<Hand> ORDER = Comparator.comparing((Hand hand) -> !hand.main())
            .thenComparing(Comparator.comparingInt(Hand::figuresPrinted).reversed())
            .thenComparing(Comparator.comparingInt(Hand::coins).reversed())
            .thenComparing(hand -> hand.convention().id());

    public Hand {
        printed = Collections.unmodifiableMap(printed);
    }

    /** What it is called in few words: the sign of its work, or its short title. */
    public Optional<String> sign() {
        return work.map(cited -> cited.sign().value()).or(convention::shortTitle);
    }

    public int printed(Kind kind) {
        return printed.getOrDefault(kind, 0);
    }

    public int figuresPrinted() {
        return printed.values().stream().mapToInt(Integer::intValue).sum();
    }

    static List<Hand> of(List<Counted> coins, Catalogue catalogue) {
        Map<String, Convention> conventions = new TreeMap<>();
        Map<String, Integer> measured = new HashMap<>();
        Map<String, Integer> uncleaned = new HashMap<>();
        Map<String, Map<Kind, Integer>> printed = new HashMap<>();
        for (Counted coin : coins) {
            blocks(coin).filter(Hand::hasFigure).map(block -> block.by().value()).distinct()
                    .forEach(id -> {
                        measured.merge(id, 1, Integer::sum);
                        uncleaned.merge(id, isUncleaned(coin) ? 1 : 0, Integer::sum);
                    });
            blocks(coin).filter(Hand::hasFigure)
                    .forEach(block -> conventions.putIfAbsent(block.by().value(), block.convention()));
            coin.chosen().forEach((kind, chosen) -> {
                if (chosen.status() == ReadingChoice.Status.READ) {
                    printed.computeIfAbsent(chosen.by().orElseThrow(), id -> new EnumMap<>(Kind.class))
                            .merge(kind, 1, Integer::sum);
                }
            });
        }
        Optional<String> main = main(coins, catalogue);
        List<Hand> hands = new ArrayList<>();
        conventions.forEach((id, convention) -> hands.add(new Hand(convention,
                convention.work().map(catalogue.works()::get), main.equals(Optional.of(id)),
                measured.get(id), uncleaned.get(id), printed.getOrDefault(id, new EnumMap<>(Kind.class)))));
        hands.sort(ORDER);
        return List.copyOf(hands);
    }

    private static Optional<String> main(List<Counted> coins, Catalogue catalogue) {
        Map<String, Type> types = new HashMap<>();
        coins.forEach(coin -> types.put(coin.type().id().value(), coin.type()));
        return ReadingChoice.of(catalogue.style()).mainConvention(catalogue, types);
    }

    private static Stream<Measurement> blocks(Counted coin) {
        return Stream.concat(coin.coin().measured().stream(), coin.coin().alsoMeasured().stream());
    }

    private static boolean isUncleaned(Counted coin) {
        return coin.coin().damage().stream().anyMatch(damage -> damage.value() == Damage.UNCLEANED);
    }

    private static boolean hasFigure(Measurement block) {
        return block.readings().values().stream().anyMatch(reading -> reading.value() instanceof Reading.Read);
    }
}
