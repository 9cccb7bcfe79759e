package exergue.edition.methods.english;

import exergue.edition.methods.AxisSteps;
import exergue.edition.methods.AxisTally.Unstruck;
import exergue.edition.methods.AxisTally;
import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.measure.Kind;
import exergue.model.Making;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What a die-axis says, how good it is, and where it says little. */
final class AxisParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        if (tally.figures(Kind.AXIS) == 0) {
            return List.of();
        }
        AxisSteps steps = AxisSteps.of(tally);
        List<String> sentences = new ArrayList<>();
        sentences.add("Die-axes are given in clock hours: with the obverse upright, the hour shows where the top of "
                + "the reverse points when the coin is turned about its upright axis.");
        steps.coarsest().ifPresent(step -> sentences.add("Read to " + hours(step, tally)
                + (steps.areSeveral() ? " at the coarsest" : "") + ", a die-axis is good to half of that either way."));
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

    private static String hours(BigDecimal hours, Tally tally) {
        return AxisSteps.hours(hours, tally.style().form());
    }
}
