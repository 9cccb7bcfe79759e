package exergue.edition.methods.german;

import exergue.edition.methods.AxisSteps;
import exergue.edition.methods.AxisTally;
import exergue.edition.methods.AxisTally.Unstruck;
import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.measure.Kind;
import exergue.measure.PrintForm;
import exergue.model.Making;
import java.util.ArrayList;
import java.util.List;

/** What a die-axis says, how good it is, and where it says little. */
final class AxisParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        if (tally.figures(Kind.AXIS) == 0) {
            return List.of();
        }
        PrintForm form = tally.style().form();
        AxisSteps steps = AxisSteps.of(tally);
        List<String> sentences = new ArrayList<>();
        sentences.add("Stempelstellungen sind in Uhrstunden angegeben: Steht die Vorderseite aufrecht, so zeigt die Stunde, "
                + "wohin der obere Rand der Rückseite weist, wenn man die Münze um ihre senkrechte Achse wendet.");
        steps.coarsest().ifPresent(step -> sentences.add((steps.areSeveral() ? "In der gröbsten Quelle auf " : "Auf ")
                + AxisSteps.hours(step, form) + " abgelesen, ist eine Stempelstellung nach beiden Seiten auf die Hälfte davon "
                + "genau."));
        AxisTally axes = tally.axes();
        if (axes.halfHours() > 0) {
            sentences.add("Halbe Stunden stehen wie überliefert (" + Noun.COIN.count(axes.halfHours()) + ").");
        }
        if (axes.between() > 0) {
            sentences.add("Ablesungen, die sonst zwischen zwei Stunden fallen, sind als die nächstgelegene Stunde angegeben ("
                    + Noun.COIN.count(axes.between()) + ").");
        }
        axes.unstruck().forEach(unstruck -> sentences.add(unstruck(unstruck, form)));
        return Passage.of(sentences);
    }

    private static String unstruck(Unstruck unstruck, PrintForm form) {
        boolean cast = unstruck.making() == Making.CAST;
        String made = cast ? "gegossene" : "maschinengeprägte";
        if (unstruck.allAt().isPresent()) {
            return (unstruck.coins() == 2 ? "Beide " : "Alle " + Grammar.NUMBERS.of(unstruck.coins()) + " ") + made
                    + "n Münzen mit überlieferter Stempelstellung haben " + AxisSteps.hours(unstruck.allAt().get(), form)
                    + "; das sagt etwas über die " + (cast ? "Herstellung der Formen" : "Einstellung der Maschine")
                    + " und nichts über die einzelne Prägung.";
        }
        return "Für " + made + " Münzen ist eine Stempelstellung nur angegeben, wo sie überliefert ist ("
                + Noun.COIN.count(unstruck.coins()) + ").";
    }
}
