package exergue.edition.methods.french;

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
            "La source principale comparée aux autres", "Source",
            List.of("Poids", "différence moyenne (g)", "limites (g)"),
            List.of("Diamètres", "différence moyenne (mm)", "limites (mm)"),
            List.of("Axes", "égaux", "à 1" + Grammar.NO_BREAK + "{h} près"), "à");

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
        sentences.add("Le tableau " + ComparisonTable.NUMBER + " compare la source principale (" + pairs.get(0).first().title()
                + ") à chacune des autres, pour les monnaies que les deux ont mesurées.");
        sentences.add("La différence est la valeur de la source principale moins celle de l’autre, de sorte qu’un signe "
                + "moins signifie que l’autre est plus élevée" + Grammar.SEMICOLON + "les limites de concordance sont la "
                + "différence moyenne moins et plus deux écarts types, d’après J." + Grammar.NO_BREAK + "M. Bland et D."
                + Grammar.NO_BREAK + "G. Altman, Lancet 327 (1986), 307–310.");
        if (pairs.stream().anyMatch(pair -> pair.inDifferentDirections() && pair.diameter().isPresent())) {
            sentences.add("Lorsque deux sources ont pris le diamètre selon des lignes différentes, cela entre dans leur "
                    + "différence.");
        }
        return sentences;
    }
}
