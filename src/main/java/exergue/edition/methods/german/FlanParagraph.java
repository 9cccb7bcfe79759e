package exergue.edition.methods.german;

import exergue.edition.methods.FlanTally;
import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.model.HouseStyle.Quotes;
import java.util.ArrayList;
import java.util.List;

/** What the diameter of a flan that is not round stands for. */
final class FlanParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        FlanTally flans = tally.flans();
        List<String> sentences = new ArrayList<>();
        if (flans.twoWay() > 0) {
            sentences.add("Quadratische und rechteckige Schrötlinge sind in beiden Richtungen gemessen ("
                    + Noun.COIN.count(flans.twoWay()) + ")" + (flans.oneWay() == 0 ? "." : "; von "
                    + (flans.oneWay() == 1 ? "einer weiteren" : Grammar.NUMBERS.of(flans.oneWay()) + " weiteren")
                    + " ist nur eine Seite überliefert."));
        } else if (flans.oneWay() > 0) {
            sentences.add("Von " + (flans.oneWay() == 1 ? "einer quadratischen oder rechteckigen Münze"
                    : Grammar.NUMBERS.of(flans.oneWay()) + " quadratischen oder rechteckigen Münzen")
                    + " ist nur eine Seite überliefert.");
        }
        if (flans.across() > 0) {
            sentences.add((flans.anySquare() ? "Bei Schrötlingen anderer Form sind zwei durch × verbundene Durchmesser"
                    : "Zwei durch × verbundene Durchmesser sind") + " in zwei Richtungen gemessen (" + Noun.COIN.count(flans.across()) + ").");
        }
        if (flans.ranges() > 0) {
            sentences.add("Zwei durch einen Strich verbundene Durchmesser sind der kleinste und der größte ("
                    + Noun.COIN.count(flans.ranges()) + ").");
        }
        if (!flans.means().isEmpty()) {
            sentences.add(means(flans.means(), tally.style().quotes()));
        }
        return Passage.of(sentences);
    }

    /** "Der Durchmesser von zwei Münzen ist als „zwischen den Kanten“ zu verstehen, der einer Münze als „…“." */
    private static String means(List<Tally.Count<String>> means, Quotes quotes) {
        List<String> clauses = new ArrayList<>();
        for (Tally.Count<String> meaning : means) {
            clauses.add((clauses.isEmpty() ? "Der Durchmesser " : "der ") + Noun.COIN.whose(meaning.times())
                    + (clauses.isEmpty() ? " ist" : "") + " als " + quotes.open() + meaning.thing() + quotes.close()
                    + (clauses.isEmpty() ? " zu verstehen" : ""));
        }
        return Grammar.list(clauses) + ".";
    }
}
