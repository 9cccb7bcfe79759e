package exergue.edition.methods.german;

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
            "Die Hauptquelle im Vergleich mit den anderen", "Quelle",
            List.of("Gewichte", "mittlere Differenz (g)", "Grenzen (g)"),
            List.of("Durchmesser", "mittlere Differenz (mm)", "Grenzen (mm)"),
            List.of("Stempelstellungen", "gleich", "bis 1" + Grammar.NO_BREAK + "{h}"), "bis");

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
        sentences.add("Tabelle " + ComparisonTable.NUMBER + " vergleicht die Hauptquelle (" + pairs.get(0).first().title()
                + ") mit jeder der anderen, und zwar anhand der Münzen, die beide gemessen haben.");
        sentences.add("Die Differenz ist der Wert der Hauptquelle minus dem der anderen Quelle; ein Minuszeichen bedeutet "
                + "also, dass der andere höher ist. Die Übereinstimmungsgrenzen sind die mittlere Differenz minus und plus "
                + "zwei Standardabweichungen, nach J." + Grammar.NO_BREAK + "M. Bland und D." + Grammar.NO_BREAK
                + "G. Altman, Lancet 327 (1986), 307–310.");
        if (pairs.stream().anyMatch(pair -> pair.inDifferentDirections() && pair.diameter().isPresent())) {
            sentences.add("Wo zwei Quellen den Durchmesser entlang verschiedener Linien gemessen haben, ist das Teil ihrer "
                    + "Differenz.");
        }
        return sentences;
    }
}
