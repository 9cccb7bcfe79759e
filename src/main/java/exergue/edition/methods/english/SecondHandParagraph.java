package exergue.edition.methods.english;

import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.model.HouseStyle;
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
        List<String> preferred = tally.preferred();
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
}
