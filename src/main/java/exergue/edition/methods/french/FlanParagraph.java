package exergue.edition.methods.french;

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
            sentences.add("Les flans carrés et rectangulaires sont mesurés dans les deux sens ("
                    + Noun.COIN.count(flans.twoWay()) + ")" + (flans.oneWay() == 0 ? "." : Grammar.SEMICOLON + "pour "
                    + Noun.COIN.number(flans.oneWay()) + (flans.oneWay() == 1 ? " autre" : " autres")
                    + ", un seul côté est consigné."));
        } else if (flans.oneWay() > 0) {
            sentences.add("Pour " + Noun.COIN.count(flans.oneWay()) + (flans.oneWay() == 1
                    ? " carrée ou rectangulaire" : " carrées ou rectangulaires") + ", un seul côté est consigné.");
        }
        if (flans.across() > 0) {
            sentences.add((flans.anySquare() ? "Sur les flans d’une autre forme, deux diamètres joints par ×"
                    : "Deux diamètres joints par ×") + " sont pris dans deux directions (" + Noun.COIN.count(flans.across()) + ").");
        }
        if (flans.ranges() > 0) {
            sentences.add("Deux diamètres joints par un tiret sont le plus petit et le plus grand ("
                    + Noun.COIN.count(flans.ranges()) + ").");
        }
        if (!flans.means().isEmpty()) {
            sentences.add(means(flans.means(), tally.style().quotes()));
        }
        return Passage.of(sentences);
    }

    /** "Le diamètre de deux monnaies s’entend comme « entre les pans », celui d’une monnaie comme « … »." */
    private static String means(List<Tally.Count<String>> means, Quotes quotes) {
        List<String> clauses = new ArrayList<>();
        for (Tally.Count<String> meaning : means) {
            clauses.add((clauses.isEmpty() ? "Le diamètre " : "celui ") + Grammar.of(Noun.COIN.count(meaning.times()))
                    + (clauses.isEmpty() ? " s’entend" : "") + " comme " + quotes.open() + meaning.thing() + quotes.close());
        }
        return Grammar.list(clauses) + ".";
    }
}
