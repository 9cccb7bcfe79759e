package exergue.edition.methods.italian;

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
            sentences.add("I tondelli quadrati e rettangolari sono misurati nei due sensi ("
                    + Noun.COIN.count(flans.twoWay()) + ")" + (flans.oneWay() == 0 ? "." : "; di "
                    + (flans.oneWay() == 1 ? "un’altra" : "altre " + Grammar.NUMBERS.of(flans.oneWay()))
                    + " è registrato un solo lato."));
        } else if (flans.oneWay() > 0) {
            sentences.add("Di " + Noun.COIN.count(flans.oneWay()) + (flans.oneWay() == 1 ? " quadrata o rettangolare"
                    : " quadrate o rettangolari") + " è registrato un solo lato.");
        }
        if (flans.across() > 0) {
            sentences.add((flans.anySquare() ? "Sui tondelli di altra forma, due diametri uniti da ×"
                    : "Due diametri uniti da ×") + " sono presi in due direzioni (" + Noun.COIN.count(flans.across()) + ").");
        }
        if (flans.ranges() > 0) {
            sentences.add("Due diametri uniti da un trattino sono il minimo e il massimo ("
                    + Noun.COIN.count(flans.ranges()) + ").");
        }
        if (!flans.means().isEmpty()) {
            sentences.add(means(flans.means(), tally.style().quotes()));
        }
        return Passage.of(sentences);
    }

    /** "Il diametro di due monete va inteso come «tra i lati», quello di una moneta come «…»." */
    private static String means(List<Tally.Count<String>> means, Quotes quotes) {
        List<String> clauses = new ArrayList<>();
        for (Tally.Count<String> meaning : means) {
            clauses.add((clauses.isEmpty() ? "Il diametro di " : "quello di ") + Noun.COIN.count(meaning.times())
                    + (clauses.isEmpty() ? " va inteso" : "") + " come " + quotes.open() + meaning.thing() + quotes.close());
        }
        return Grammar.list(clauses) + ".";
    }
}
