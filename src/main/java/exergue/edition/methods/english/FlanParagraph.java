package exergue.edition.methods.english;

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
            sentences.add("Square and rectangular flans are measured both ways ("
                    + Grammar.count(flans.twoWay(), "coin") + ")"
                    + (flans.oneWay() == 0 ? "."
                    : "; of " + Grammar.number(flans.oneWay()) + " more only one side is recorded."));
        } else if (flans.oneWay() > 0) {
            sentences.add("Of " + Grammar.count(flans.oneWay(), "square or rectangular coin")
                    + " only one side is recorded.");
        }
        if (flans.across() > 0) {
            sentences.add((flans.anySquare() ? "On flans of other shapes, two diameters joined by × were"
                    : "Two diameters joined by × were") + " taken in two directions (" + Grammar.count(flans.across(), "coin") + ").");
        }
        if (flans.ranges() > 0) {
            sentences.add("Two diameters joined by a dash are the least and the greatest ("
                    + Grammar.count(flans.ranges(), "coin") + ").");
        }
        if (!flans.means().isEmpty()) {
            sentences.add(means(flans.means(), tally.style().quotes()));
        }
        return Passage.of(sentences);
    }

    /** "The diameter of two coins is to be understood as “across the flats”, that of one coin as “…”." */
    private static String means(List<Tally.Count<String>> means, Quotes quotes) {
        List<String> clauses = new ArrayList<>();
        for (Tally.Count<String> meaning : means) {
            clauses.add((clauses.isEmpty() ? "The diameter of " : "that of ")
                    + Grammar.count(meaning.times(), "coin") + (clauses.isEmpty() ? " is to be understood" : "") + " as "
                    + quotes.open() + meaning.thing() + quotes.close());
        }
        return Grammar.list(clauses) + ".";
    }
}
