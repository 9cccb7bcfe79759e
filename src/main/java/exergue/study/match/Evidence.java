package exergue.study.match;

import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.study.Summary;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What fresh readings tell for each entry: the logarithm of how many times more probable they are if it is this coin than if it
 * is a coin that the catalogue has not. Such a coin is like those of the catalogue in four cases of five, and otherwise like
 * none. A kind of figure that either lacks tells nothing.
 *
 * <p>One reading in fifty is taken to be a slip, which may be any figure that occurs; so a single wrong figure does not rule a
 * coin out. A ticket counts as much as odds of twenty to one. All these are choices, no source.
 */
final class Evidence {

    private static final List<Kind> KINDS = List.of(Kind.WEIGHT, Kind.DIAMETER, Kind.AXIS);
    private static final double SLIP = 0.02;
    private static final double LIKE_THE_OTHERS = 0.8;
    private static final double TICKET = Math.log(20);
    private static final double HOURS = 12;
    /** An "about" or a query doubles what a reading may be out by. A choice, no source. */
    private static final double VAGUE = 2;
    private static final int SHOWN = 3;

    private final List<Entry> entries;
    private final HandErrors errors;
    private final Map<Kind, Occurring> occurring = new HashMap<>();

    Evidence(List<Entry> entries, HandErrors errors) {
        this.entries = entries;
        this.errors = errors;
        for (Kind kind : KINDS) {
            occurring.put(kind, Occurring.of(entries.stream().flatMap(entry -> entry.figure(kind, Convention.UNDECLARED).stream())
                    .mapToDouble(Entry.Recorded::figure).sorted().toArray()));
        }
    }

    /** What figures of a kind there are in the catalogue, roughly: a Cauchy distribution about their median, which excludes none. */
    private record Occurring(double middle, double halfWidth) {

        static Occurring of(double[] sorted) {
            if (sorted.length == 0) {
                return new Occurring(0, 1);
            }
            double half = (Summary.quantile(sorted, 0.75) - Summary.quantile(sorted, 0.25)) / 2;
            return new Occurring(Summary.quantile(sorted, 0.5), Math.max(half, 0.1));
        }

        double density(double figure) {
            double z = (figure - middle) / halfWidth;
            return 1 / (Math.PI * halfWidth * (1 + z * z));
        }
    }

    List<Entry> entries() {
        return entries;
    }

    /** One for each entry. */
    double[] gains(FreshCoin fresh) {
        double[] gains = new double[entries.size()];
        for (Kind kind : KINDS) {
            Entry.recorded(fresh.measured(), kind).ifPresent(read -> add(kind, read, gains));
        }
        fresh.ticket().ifPresent(ticket -> {
            for (int i = 0; i < gains.length; i++) {
                gains[i] += entries.get(i).id().equals(ticket.value()) ? TICKET : 0;
            }
        });
        return gains;
    }

    private void add(Kind kind, Entry.Recorded fresh, double[] gains) {
        double[] likelihoods = new double[gains.length];
        int known = 0;
        double sum = 0;
        for (int i = 0; i < gains.length; i++) {
            Optional<Entry.Recorded> recorded = entries.get(i).figure(kind, fresh.hand());
            likelihoods[i] = recorded.map(figure -> likelihood(kind, fresh, figure)).orElse(Double.NaN);
            if (recorded.isPresent()) {
                known++;
                sum += likelihoods[i];
            }
        }
        double stranger = LIKE_THE_OTHERS * sum / known + (1 - LIKE_THE_OTHERS) * anything(kind, fresh);
        for (int i = 0; i < gains.length; i++) {
            if (!Double.isNaN(likelihoods[i])) {
                gains[i] += Math.log(likelihoods[i] / stranger);
            }
        }
    }

    private double likelihood(Kind kind, Entry.Recorded fresh, Entry.Recorded recorded) {
        HandError error = errors.between(kind, fresh.hand(), recorded.hand());
        HandError wide = fresh.vague() || recorded.vague() ? error.times(VAGUE) : error;
        return (1 - SLIP) * wide.density(difference(kind, fresh.figure(), recorded.figure())) + SLIP * anything(kind, fresh);
    }

    private double anything(Kind kind, Entry.Recorded fresh) {
        return kind == Kind.AXIS ? 1 / HOURS : occurring.get(kind).density(fresh.figure());
    }

    /** Fresh less recorded; of axes the shorter way round, from -6 to 6 hours. */
    private static double difference(Kind kind, double fresh, double recorded) {
        return kind == Kind.AXIS ? Math.IEEEremainder(fresh - recorded, HOURS) : fresh - recorded;
    }

    /** The most probable three. */
    List<Candidate> candidates(FreshCoin fresh, double[] gains) {
        double most = Math.max(0, IntStream.range(0, gains.length).mapToDouble(i -> gains[i]).max().orElse(0));
        double sum = Math.exp(-most) + IntStream.range(0, gains.length).mapToDouble(i -> Math.exp(gains[i] - most)).sum();
        return IntStream.range(0, gains.length).boxed().sorted(Comparator.comparingDouble((Integer i) -> -gains[i])).limit(SHOWN)
                .map(i -> candidate(fresh, entries.get(i), Math.exp(gains[i] - most) / sum)).toList();
    }

    private static Candidate candidate(FreshCoin fresh, Entry entry, double share) {
        return new Candidate(entry.id(), share, difference(Kind.WEIGHT, fresh, entry), difference(Kind.DIAMETER, fresh, entry),
                difference(Kind.AXIS, fresh, entry));
    }

    private static OptionalDouble difference(Kind kind, FreshCoin fresh, Entry entry) {
        Optional<Double> difference = Entry.recorded(fresh.measured(), kind).flatMap(read -> entry.figure(kind, read.hand())
                .map(recorded -> difference(kind, read.figure(), recorded.figure())));
        return difference.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
