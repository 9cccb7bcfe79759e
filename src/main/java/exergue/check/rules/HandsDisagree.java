package exergue.check.rules;

import exergue.check.Hand;
import exergue.check.Rule;
import exergue.check.TwoReadings;
import exergue.check.TwoReadings.One;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.measure.Kind;
import exergue.measure.Meant;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Damage;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Two hands give figures for one coin that differ by more than their rounding and the usual spread. A figure that
 * says of itself that it is not exact (about, less than, more than, uncertain) is not held against another.
 */
public final class HandsDisagree implements Rule {

    static final Code CODE = new Code("hands-disagree", Severity.WARNING,
            "Two hands give figures for one coin that cannot both be right",
            "Where two people measured one coin, their figures check each other. Weights of one coin repeat to 0.02 g or "
                    + "1 per cent, diameters to half a millimetre in one direction and a millimetre in different ones, "
                    + "axes to an hour, densities to 1 and surfaces to 5 per cent, each beyond the rounding of the two figures (common practice, no source). A "
                    + "wider gap is mostly a slip: digits swapped, the decimal point one place off, grains written as "
                    + "grams, an axis read on the mirror image, 6 and 12 confused. The message names the slip if there "
                    + "is one that explains the two figures.",
            """
                    measured: {by: bench-2024, weight: 3.78 g}
                    also-measured:
                      - {by: hallam-1931, weight: 3.87 g}
                    """,
            """
                    measured: {by: bench-2024, weight: 3.87 g}
                    also-measured:
                      - {by: hallam-1931, weight: 3.87 g}
                    """);

    /** What cleaning can take off a coin, as a share of its weight; common practice, no source. */
    private static final BigDecimal CLEANED = new BigDecimal("0.1");
    /** What a coin can lose and still be the same coin to those who weigh it; common practice, no source. */
    private static final BigDecimal DAMAGED = new BigDecimal("0.5");

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (Coin coin : catalogue.coins()) {
            for (Kind kind : Kind.values()) {
                faults.addAll(faults(coin, figures(coin, kind), kind));
            }
        }
        return faults;
    }

    /** One finding for each figure that has to be mended, however many others it stands against. */
    private static List<Finding> faults(Coin coin, List<One> figures, Kind kind) {
        List<Finding> faults = new ArrayList<>();
        List<One> left = new ArrayList<>(figures);
        Optional<One> odd = oddOne(left, kind);
        while (odd.isPresent()) {
            List<One> against = against(odd.get(), left, kind);
            faults.add(fault(coin, odd.get(), against, pair(odd.get(), against.get(0), figures, kind)));
            left.remove(odd.get());
            odd = oddOne(left, kind);
        }
        return faults;
    }

    /** The figure that most others are against; of equals, the one that a slip explains, else the one further down in the entry. */
    private static Optional<One> oddOne(List<One> figures, Kind kind) {
        return figures.stream().filter(figure -> !against(figure, figures, kind).isEmpty())
                .reduce((one, next) -> {
                    int more = against(next, figures, kind).size() - against(one, figures, kind).size();
                    return more > 0 || more == 0 && !slippedInFirst(pair(one, next, figures, kind)) ? next : one;
                });
    }

    private static List<One> against(One figure, List<One> figures, Kind kind) {
        return figures.stream().filter(other -> other != figure && pair(figure, other, figures, kind).disagree()).toList();
    }

    /** The two in the order of the entry. */
    private static TwoReadings pair(One one, One other, List<One> figures, Kind kind) {
        return figures.indexOf(one) < figures.indexOf(other) ? new TwoReadings(kind, one, other) : new TwoReadings(kind, other, one);
    }

    private static List<One> figures(Coin coin, Kind kind) {
        List<One> figures = new ArrayList<>();
        for (Hand hand : Hand.of(coin)) {
            hand.measurement().reading(kind).ifPresent(written -> {
                if (written.value() instanceof Reading.Read read && read.qualifier() == Reading.Qualifier.NONE) {
                    figures.add(new One(hand, written, read));
                }
            });
        }
        return figures;
    }

    private static Finding fault(Coin coin, One odd, List<One> against, TwoReadings two) {
        String kind = two.kind().word();
        String what = "The " + kind + " of “" + coin.id() + "” is " + two.first().said() + " under “"
                + two.first().hand().measurement().by() + "” but " + two.second().said() + " under “"
                + two.second().hand().measurement().by() + "”, " + two.apartInWords() + " apart"
                + asWell(odd, against) + ". "
                + cause(coin, two).map(cause -> "Probable cause: " + cause + ".").orElse("No usual slip explains it.");
        String remedy = "Look both figures up and mend the wrong one. If neither can be looked up, mark the doubtful one "
                + "with a question mark: " + kind + ": '" + odd.read().recorded() + " ?'.";
        List<Finding.Related> related = against.stream().map(other -> new Finding.Related(other.written().place(),
                "the " + kind + " under “" + other.hand().measurement().by() + "”")).toList();
        return new Finding(CODE, odd.written().place(), odd.hand().path() + "." + kind, what, remedy, related, Optional.empty());
    }

    /** The others that stand against the same figure. */
    private static String asWell(One odd, List<One> against) {
        String others = against.stream().skip(1).map(other -> "“" + other.hand().measurement().by() + "”")
                .collect(Collectors.joining(" and "));
        return others.isEmpty() ? "" : "; the figure under " + others + " is against “" + odd.hand().measurement().by() + "” as well";
    }

    private static Optional<String> cause(Coin coin, TwoReadings two) {
        return slip(two).or(() -> circumstance(coin, two));
    }

    private static Optional<String> slip(TwoReadings two) {
        return slippedInFirst(two)
                ? two.slip(two.first(), two.second()).map(meant -> words(two.first(), meant))
                : two.slip(two.second(), two.first()).map(meant -> words(two.second(), meant));
    }

    /** True where only a slip in the first figure explains the two, or one that is commoner than what it would be in the second. */
    private static boolean slippedInFirst(TwoReadings two) {
        Optional<Meant> inFirst = two.slip(two.first(), two.second());
        Optional<Meant> inSecond = two.slip(two.second(), two.first());
        return inFirst.isPresent() && (inSecond.isEmpty() || inFirst.get().slip().compareTo(inSecond.get().slip()) < 0);
    }

    private static String words(One slipped, Meant meant) {
        return meant.slip().words() + " (“" + slipped.read().recorded() + "” for "
                + meant.quoted(slipped.read().first().unit())
                + (meant.slip().eitherWay() ? ", or the other way round)" : ")");
    }

    /** What may have happened between the two measurements, where no slip explains them. */
    private static Optional<String> circumstance(Coin coin, TwoReadings two) {
        if (two.directionsMayExplain()) {
            return Optional.of("different directions (“" + direction(two.first()) + "” and “"
                    + direction(two.second()) + "”)");
        }
        if (two.kind() == Kind.WEIGHT && two.share().compareTo(CLEANED) <= 0 && !cleaning(two.first()).equals(cleaning(two.second()))) {
            return Optional.of("the coin was cleaned between the two weighings");
        }
        if (two.kind() == Kind.WEIGHT && two.share().compareTo(DAMAGED) <= 0 && !coin.damage().isEmpty()) {
            return Optional.of("damage (" + coin.damage().stream().map(d -> d.value()).map(Damage::word)
                    .collect(Collectors.joining(", ")) + ") between the two weighings");
        }
        return Optional.empty();
    }

    private static String direction(One one) {
        return one.hand().measurement().convention().sizing().direction().word();
    }

    private static Optional<String> cleaning(One one) {
        return one.hand().measurement().convention().cleaning();
    }
}
