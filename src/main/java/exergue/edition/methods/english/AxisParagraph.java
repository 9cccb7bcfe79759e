package exergue.edition.methods.english;

import exergue.edition.methods.AxisTally;
import exergue.edition.methods.AxisTally.Unstruck;
import exergue.edition.methods.Hand;
import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.measure.Kind;
import exergue.measure.PrintForm;
import exergue.model.Making;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a die-axis says, how good it is, and where it says little. */
final class AxisParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        if (tally.figures(Kind.AXIS) == 0) {
            return List.of();
        }
        List<String> sentences = new ArrayList<>();
        sentences.add("Die-axes are given in clock hours: with the obverse upright, the hour shows where the top of "
                + "the reverse points when the coin is turned about its upright axis.");
        coarsest(tally).ifPresent(step -> sentences.add("Read to " + hours(step, tally)
                + (severalSteps(tally) ? " at the coarsest" : "") + ", a die-axis is good to half of that either way."));
        AxisTally axes = tally.axes();
        if (axes.halfHours() > 0) {
            sentences.add("Half hours stand as recorded (" + Grammar.count(axes.halfHours(), "coin") + ").");
        }
        if (axes.between() > 0) {
            sentences.add("Readings elsewhere between two hours are given as the nearer hour ("
                    + Grammar.count(axes.between(), "coin") + ").");
        }
        axes.unstruck().forEach(unstruck -> sentences.add(unstruck(unstruck, tally)));
        return Passage.of(sentences);
    }

    private static String unstruck(Unstruck unstruck, Tally tally) {
        String made = unstruck.making() == Making.CAST ? "cast coin" : "machine-struck coin";
        if (unstruck.allAt().isPresent()) {
            String all = unstruck.coins() == 2 ? "Both " : "All " + Grammar.number(unstruck.coins()) + " ";
            return all + Grammar.plural(made) + " with a recorded die-axis have "
                    + hours(unstruck.allAt().get(), tally) + ", which tells of "
                    + (unstruck.making() == Making.CAST ? "how the moulds were made" : "how the machine was set")
                    + " and not of single strokes.";
        }
        return "For " + Grammar.plural(made) + " a die-axis is given only where it was recorded ("
                + Grammar.count(unstruck.coins(), "coin") + ").";
    }

    /** The largest step of all hands whose axes are printed; nothing if one of them does not say. */
    private static Optional<BigDecimal> coarsest(Tally tally) {
        List<Optional<BigDecimal>> steps = steps(tally);
        return steps.stream().allMatch(Optional::isPresent)
                ? steps.stream().flatMap(Optional::stream).max(BigDecimal::compareTo) : Optional.empty();
    }

    private static boolean severalSteps(Tally tally) {
        return steps(tally).stream().map(step -> step.map(BigDecimal::stripTrailingZeros)).distinct().count() > 1;
    }

    private static List<Optional<BigDecimal>> steps(Tally tally) {
        return tally.hands().stream().filter(hand -> hand.printed(Kind.AXIS) > 0)
                .map(hand -> hand.convention().turning().resolution()).toList();
    }

    private static String hours(BigDecimal hours, Tally tally) {
        PrintForm form = tally.style().form();
        return hours.stripTrailingZeros().toPlainString().replace(".", form.decimalMark()) + form.unitSpace()
                + form.hourSign();
    }
}
