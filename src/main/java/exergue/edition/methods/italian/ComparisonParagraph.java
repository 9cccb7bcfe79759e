package exergue.edition.methods.italian;

import exergue.edition.methods.ComparisonTable;
import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.study.TwoHands;
import java.util.ArrayList;
import java.util.List;

/** How far the main source agrees with the others: a sentence for one of them, a table for several. */
final class ComparisonParagraph implements MethodsParagraph {

    private static final ComparisonTable.Words TABLE = new ComparisonTable.Words(
            "La fonte principale a confronto con le altre", "Fonte",
            List.of("Pesi", "differenza media (g)", "limiti (g)"),
            List.of("Diametri", "differenza media (mm)", "limiti (mm)"),
            List.of("Assi", "uguali", "entro 1" + Grammar.NO_BREAK + "{h}"), "a");

    @Override
    public List<Passage> passages(Tally tally) {
        List<TwoHands> pairs = tally.agreement().pairs();
        if (pairs.size() < 2) {
            return Passage.of(pairs.stream().map(pair -> AgreementSentence.of(pair, tally.style().form())).toList());
        }
        return List.of(new Passage.Sentences("", introduction(pairs)), ComparisonTable.of(tally, TABLE));
    }

    private static List<String> introduction(List<TwoHands> pairs) {
        List<String> sentences = new ArrayList<>();
        sentences.add("La tabella " + ComparisonTable.NUMBER + " confronta la fonte principale (" + pairs.get(0).first().title()
                + ") con ciascuna delle altre, per le monete che entrambe hanno misurato.");
        sentences.add("La differenza è il valore della fonte principale meno quello dell’altra, sicché un segno meno "
                + "significa che l’altro è il più alto; i limiti di concordanza sono la differenza media meno e più due "
                + "deviazioni standard, secondo J." + Grammar.NO_BREAK + "M. Bland e D." + Grammar.NO_BREAK
                + "G. Altman, Lancet 327 (1986), 307–310.");
        if (pairs.stream().anyMatch(pair -> pair.inDifferentDirections() && pair.diameter().isPresent())) {
            sentences.add("Quando due fonti hanno misurato il diametro lungo linee diverse, ciò rientra nella loro "
                    + "differenza.");
        }
        return sentences;
    }
}
