package exergue.edition.methods.english;

import exergue.edition.methods.ComparisonTable;
import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.study.Agreement;
import exergue.study.TwoHands;
import java.util.ArrayList;
import java.util.List;

/** How far the main source agrees with the others: a sentence for one of them, a table for several. */
final class ComparisonParagraph implements MethodsParagraph {

    private static final ComparisonTable.Words TABLE = new ComparisonTable.Words(
            "The main source compared with the others", "Source",
            List.of("Weights", "mean difference (g)", "limits (g)"),
            List.of("Diameters", "mean difference (mm)", "limits (mm)"),
            List.of("Die-axes", "equal", "within 1" + Grammar.NO_BREAK + "{h}"), "to");

    @Override
    public List<Passage> passages(Tally tally) {
        Agreement agreement = tally.agreement();
        if (agreement.pairs().size() < 2) {
            return Passage.of(agreement.pairs().stream()
                    .map(pair -> AgreementSentence.of(pair, tally.style().form())).toList());
        }
        return List.of(new Passage.Sentences("", introduction(agreement.pairs())), ComparisonTable.of(tally, TABLE));
    }

    private static List<String> introduction(List<TwoHands> pairs) {
        String main = pairs.get(0).first().title();
        List<String> sentences = new ArrayList<>();
        sentences.add("Table " + ComparisonTable.NUMBER + " compares the main source, " + main + ", with each of the others, over the coins that "
                + "both have measured.");
        sentences.add("A difference is the figure of the main source less that of the other, so that a minus sign means "
                + "that the other is the higher; the limits of agreement are the mean difference less and plus two "
                + "standard deviations, after J." + Grammar.NO_BREAK + "M. Bland and D." + Grammar.NO_BREAK
                + "G. Altman, Lancet 327 (1986), 307–310.");
        if (pairs.stream().anyMatch(pair -> pair.inDifferentDirections() && pair.diameter().isPresent())) {
            sentences.add("Where two sources took the diameter along different lines, that is part of their "
                    + "difference.");
        }
        return sentences;
    }
}
