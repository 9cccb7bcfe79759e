package exergue.edition.methods.italian;

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
        sentences.add("Gli assi dei conii sono dati in ore di quadrante: con il dritto in posizione verticale, l’ora indica dove "
                + "punta la parte alta del rovescio quando la moneta è girata attorno al suo asse verticale.");
        steps.coarsest().ifPresent(step -> sentences.add("Letto con un’approssimazione di " + AxisSteps.hours(step, form)
                + (steps.areSeveral() ? " nella fonte meno precisa" : "")
                + ", un asse è sicuro entro la metà di questo valore, in un senso e nell’altro."));
        AxisTally axes = tally.axes();
        if (axes.halfHours() > 0) {
            sentences.add("Le mezze ore sono date come registrate (" + Noun.COIN.count(axes.halfHours()) + ").");
        }
        if (axes.between() > 0) {
            sentences.add("Le letture che cadono altrove fra due ore sono riportate all’ora più vicina ("
                    + Noun.COIN.count(axes.between()) + ").");
        }
        axes.unstruck().forEach(unstruck -> sentences.add(unstruck(unstruck, form)));
        return Passage.of(sentences);
    }

    private static String unstruck(Unstruck unstruck, PrintForm form) {
        boolean cast = unstruck.making() == Making.CAST;
        String made = "monete " + (cast ? "fuse" : "coniate a macchina");
        if (unstruck.allAt().isPresent()) {
            return all(unstruck.coins()) + made + " di cui è registrato l’asse hanno "
                    + AxisSteps.hours(unstruck.allAt().get(), form) + ", il che informa "
                    + (cast ? "sulla preparazione delle forme" : "sulla regolazione della macchina")
                    + " e non sulle singole coniazioni.";
        }
        return "Per le " + made + " l’asse è dato solo dove è stato registrato (" + Noun.COIN.count(unstruck.coins()) + ").";
    }

    private static String all(int coins) {
        return coins == 2 ? "Entrambe le " : Grammar.NUMBERS.inWords(coins)
                ? "Tutte e " + Grammar.NUMBERS.of(coins) + " le " : "Tutte le " + Grammar.NUMBERS.of(coins) + " ";
    }
}
