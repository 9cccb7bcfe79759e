package exergue.edition.methods.english;

import exergue.edition.methods.Hand;
import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.model.HouseStyle;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;

/** Coins that more than one hand has measured: which figure is printed. */
final class SecondHandParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        if (tally.readTwice() == 0) {
            return List.of();
        }
        String which = tally.readTwice() == 1 ? "for it" : "for each of them";
        List<String> sentences = new ArrayList<>();
        sentences.add("For " + Grammar.count(tally.readTwice(), "coin")
                + " there are figures from more than one source.");
        List<String> preferred = preferred(tally);
        if (preferred.size() > 1) {
            sentences.add("Printed " + which + " is the first figure in this order of sources: "
                    + String.join("; ", preferred) + ".");
        } else if (preferred.size() == 1) {
            sentences.add("Printed " + which + " is the figure from " + preferred.get(0)
                    + " where there is one, otherwise the first that the entry gives.");
        } else {
            sentences.add("Printed " + which + " is the first figure that the entry gives.");
        }
        sentences.add(tally.style().otherHands() == HouseStyle.OtherHands.PRINTED
                ? "The other figures follow among the remarks on the coin, as recorded and as converted."
                : "The other figures are kept with the record of the coin.");
        return Passage.of(sentences);
    }

    /** Titles of the house's preferred conventions, as far as they were used at all. */
    private static List<String> preferred(Tally tally) {
        List<String> titles = new ArrayList<>();
        for (Written<String> id : tally.style().prefer()) {
            for (Hand hand : tally.hands()) {
                if (hand.convention().id().equals(id.value())) {
                    titles.add(hand.convention().title());
                }
            }
        }
        return titles;
    }
}
