package exergue.edition.methods.italian;

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
        List<String> sentences = new ArrayList<>();
        sentences.add("Per " + Noun.COIN.count(tally.readTwice()) + " esistono misure di più fonti.");
        String which = (tally.readTwice() == 1 ? "Per questa moneta" : "Per ciascuna di esse") + " è stampato ";
        List<String> preferred = tally.preferred();
        if (preferred.size() > 1) {
            sentences.add(which + "il primo valore disponibile, in quest’ordine di fonti: " + String.join("; ", preferred)
                    + ".");
        } else if (preferred.size() == 1) {
            sentences.add(which + "il valore della fonte preferita (" + preferred.get(0)
                    + "), se esiste, altrimenti il primo che la scheda riporta.");
        } else {
            sentences.add(which + "il primo valore che la scheda riporta.");
        }
        sentences.add(tally.style().otherHands() == HouseStyle.OtherHands.PRINTED
                ? "Gli altri valori seguono tra le osservazioni sulla moneta, come registrati e come convertiti."
                : "Gli altri valori sono conservati nei dati della moneta.");
        return Passage.of(sentences);
    }
}
