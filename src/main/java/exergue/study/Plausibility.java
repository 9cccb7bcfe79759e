package exergue.study;

import exergue.finding.Excused;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.measure.Kind;
import exergue.measure.Meant;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Damage;
import exergue.model.Limits;
import exergue.model.ReadingChoice;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds coins whose printed weight or diameter is far off: outside the limits their type declares or, where it declares
 * none, an outlier among the coins of their type or, where the type is small, among those of their mint, denomination,
 * metal and weight standard; where no standard is named, coins of one ruler are taken to be of one.
 */
public final class Plausibility {

    /** What can make a coin heavier than it was. */
    private static final Set<Damage> ADDS_WEIGHT =
            EnumSet.of(Damage.MOUNTED, Damage.PLUGGED, Damage.CORRODED, Damage.UNCLEANED);

    private final Kind kind;
    private final Map<String, Group> byType = new HashMap<>();
    private final Map<List<String>, Group> byDenomination = new HashMap<>();
    private final List<Weighed> coins = new ArrayList<>();

    private record Weighed(Coin coin, Type type, Written<Reading> written, Reading.Read read, String path) { }

    private Plausibility(Kind kind) {
        this.kind = kind;
    }

    /** Weights and diameters of all coins whose type is known. */
    public static Findings check(Catalogue catalogue) {
        List<Finding> found = new ArrayList<>();
        List<Excused> excused = new ArrayList<>();
        for (Kind kind : List.of(Kind.WEIGHT, Kind.DIAMETER)) {
            Plausibility plausibility = new Plausibility(kind);
            plausibility.gather(catalogue);
            for (Weighed coin : plausibility.coins) {
                Optional<Finding> fault = plausibility.fault(coin);
                Optional<Coin.WeightCounts> takenOut = plausibility.takenOut(coin.coin());
                fault.ifPresent(finding -> takenOut.ifPresentOrElse(
                        said -> excused.add(new Excused(finding, said.why().value(), said.why().place())), () -> found.add(finding)));
            }
        }
        return Findings.of(found, excused);
    }

    private void gather(Catalogue catalogue) {
        Map<String, Type> types = new HashMap<>();
        catalogue.types().forEach(type -> types.putIfAbsent(type.id().value(), type));
        ReadingChoice choice = ReadingChoice.of(catalogue.style());
        for (Coin coin : catalogue.coins()) {
            Type type = types.get(coin.type().value());
            if (type != null) {
                ReadingChoice.Chosen chosen = choice.choose(coin, type, kind);
                chosen.figure().filter(Figure::isExact).filter(read -> Figure.of(read) > 0)
                        .ifPresent(read -> add(new Weighed(coin, type, chosen.reading().orElseThrow(), read,
                                path(coin, chosen))));
            }
        }
    }

    private void add(Weighed weighed) {
        coins.add(weighed);
        if (isSound(weighed.coin())) {
            double figure = Figure.of(weighed.read());
            byType.computeIfAbsent(weighed.type().id().value(), any -> new Group(kind, "coins of its type"))
                    .add(figure);
            byDenomination.computeIfAbsent(denomination(weighed.type()),
                    any -> new Group(kind, alike(weighed.type()))).add(figure);
        }
    }

    /** Damage takes a diameter out of the group without exception; for a weight the author may know better. */
    private boolean isSound(Coin coin) {
        return kind == Kind.WEIGHT ? coin.weightInStatistics() : coin.damage().isEmpty();
    }

    private static List<String> denomination(Type type) {
        String standard = type.standard().map(named -> "standard " + named.value())
                .or(() -> type.ruler().map(ruler -> "ruler " + ruler.value())).orElse("");
        return List.of(type.mint().value(), type.denomination().value(), type.metal().value(), standard);
    }

    private static String alike(Type type) {
        String standard = type.standard().isPresent() ? ", metal and weight standard"
                : type.ruler().isPresent() ? ", metal and ruler" : " and metal";
        return "coins of its mint, denomination" + standard;
    }

    private Optional<Finding> fault(Weighed weighed) {
        double figure = Figure.of(weighed.read());
        return expected(weighed)
                .filter(expected -> !expected.holds(figure))
                .filter(expected -> !isExplained(weighed.coin(), expected.isAbove(figure)))
                .map(expected -> finding(weighed, expected));
    }

    private Optional<Expected> expected(Weighed weighed) {
        Optional<Limits.Span> declared = weighed.type().limits().map(limits -> limits.spans().get(kind));
        if (declared.isPresent()) {
            return limits(weighed.type(), declared.get());
        }
        return Optional.ofNullable(byType.get(weighed.type().id().value())).flatMap(Group::expected)
                .or(() -> Optional.ofNullable(byDenomination.get(denomination(weighed.type())))
                        .flatMap(Group::expected));
    }

    /** Empty where the limits are the wrong way round: that is reported elsewhere. */
    private static Optional<Expected> limits(Type type, Limits.Span span) {
        if (!(span.from().value() instanceof Reading.Read from) || !(span.to().value() instanceof Reading.Read to)) {
            return Optional.empty();
        }
        double least = from.first().value().doubleValue();
        double greatest = to.first().value().doubleValue();
        return least > greatest ? Optional.empty() : Optional.of(new Expected(StudyCodes.OUTSIDE_LIMITS, least, greatest,
                "the type “" + type.id() + "” expects “" + from.recorded() + "” to “" + to.recorded() + "”"));
    }

    /** An author who takes a weight out of statistics has seen it and said why. */
    private Optional<Coin.WeightCounts> takenOut(Coin coin) {
        return kind == Kind.WEIGHT ? coin.weightCounts().filter(said -> !said.counts().value()) : Optional.empty();
    }

    /** Damage explains a coin that is too light or too small, some damage also one that is too heavy or too large. */
    private boolean isExplained(Coin coin, boolean tooLittle) {
        return tooLittle ? !coin.damage().isEmpty()
                : coin.damage().stream().map(Written::value).anyMatch(ADDS_WEIGHT::contains);
    }

    private Finding finding(Weighed weighed, Expected expected) {
        boolean tooLittle = expected.isAbove(Figure.of(weighed.read()));
        String what = "The " + kind.word() + " “" + weighed.read().recorded() + "” of “" + weighed.coin().id() + "” is "
                + (tooLittle ? "low" : "high") + ": " + expected.words() + ". Probable cause: "
                + cause(weighed.read(), expected).orElse(circumstance(tooLittle)) + ".";
        String remedy = "Look the figure up and mend it, or list the damage, or name the right type. If the coin is really "
                + "so, " + (expected.code().equals(StudyCodes.OUTSIDE_LIMITS)
                        ? "widen the “limits” of the type." : "declare “limits” in the type that allow for it.");
        return Finding.of(expected.code(), weighed.written().place(), weighed.path(), what, remedy);
    }

    private static Optional<String> cause(Reading.Read read, Expected expected) {
        return Meant.by(read).stream().filter(meant -> expected.holds(meant.normal())).findFirst()
                .map(meant -> meant.slip().words() + " (“" + read.recorded() + "” for "
                        + meant.quoted(read.first().unit()) + ")");
    }

    private String circumstance(boolean tooLittle) {
        if (kind == Kind.DIAMETER) {
            return tooLittle ? "a coin that is broken or clipped and not said to be so, or of a smaller denomination"
                    : "a coin of a larger denomination, or a flan hammered or mounted and not said to be so";
        }
        return tooLittle ? "a coin that is broken, worn or plated and not said to be so, or of a smaller denomination"
                : "a coin of a larger denomination, or one that is mounted or uncleaned and not said to be so";
    }

    private String path(Coin coin, ReadingChoice.Chosen chosen) {
        int also = coin.alsoMeasured().indexOf(chosen.measurement().orElseThrow());
        boolean main = coin.measured().equals(chosen.measurement());
        return (main ? "measured" : "also-measured[" + (also + 1) + "]") + "." + kind.word();
    }
}
