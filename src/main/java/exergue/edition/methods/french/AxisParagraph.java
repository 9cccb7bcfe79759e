package exergue.edition.methods.french;

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
        sentences.add("Les axes sont donnés en heures de cadran" + Grammar.COLON + "le droit étant placé à l’endroit, l’heure "
                + "indique où pointe le haut du revers lorsqu’on retourne la monnaie autour de son axe vertical.");
        steps.coarsest().ifPresent(step -> sentences.add("Relevé à " + AxisSteps.hours(step, form) + " près"
                + (steps.areSeveral() ? " dans la source la moins précise" : "")
                + ", un axe est sûr à la moitié de cette valeur près, dans un sens comme dans l’autre."));
        AxisTally axes = tally.axes();
        if (axes.halfHours() > 0) {
            sentences.add("Les demi-heures sont données telles que notées (" + Noun.COIN.count(axes.halfHours()) + ").");
        }
        if (axes.between() > 0) {
            sentences.add("Les relevés qui tombent ailleurs entre deux heures sont ramenés à l’heure la plus proche ("
                    + Noun.COIN.count(axes.between()) + ").");
        }
        axes.unstruck().forEach(unstruck -> sentences.add(unstruck(unstruck, form)));
        return Passage.of(sentences);
    }

    private static String unstruck(Unstruck unstruck, PrintForm form) {
        boolean cast = unstruck.making() == Making.CAST;
        String made = cast ? "monnaies coulées" : "monnaies frappées à la machine";
        if (unstruck.allAt().isPresent()) {
            return "Les " + Grammar.NUMBERS.of(unstruck.coins()) + " " + made + " dont l’axe est consigné ont toutes "
                    + AxisSteps.hours(unstruck.allAt().get(), form) + ", ce qui renseigne sur "
                    + (cast ? "la confection des moules" : "le réglage de la machine") + " et non sur chaque frappe.";
        }
        return "Pour les " + made + ", l’axe n’est donné que là où il a été consigné ("
                + Noun.COIN.count(unstruck.coins()) + ").";
    }
}
