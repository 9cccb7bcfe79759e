package exergue.edition.methods.french;

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
        sentences.add("Pour " + Noun.COIN.count(tally.readTwice()) + ", il existe des mesures de plusieurs sources.");
        String which = tally.readTwice() == 1 ? "Pour cette monnaie" : "Pour chacune d’elles";
        List<String> preferred = tally.preferred();
        if (preferred.size() > 1) {
            sentences.add(which + " est imprimée la première valeur disponible, dans l’ordre de sources suivant"
                    + Grammar.COLON + String.join(Grammar.SEMICOLON, preferred) + ".");
        } else if (preferred.size() == 1) {
            sentences.add(which + " est imprimée, si elle existe, la valeur de la source préférée (" + preferred.get(0)
                    + "), sinon la première que donne la notice.");
        } else {
            sentences.add(which + " est imprimée la première valeur que donne la notice.");
        }
        sentences.add(tally.style().otherHands() == HouseStyle.OtherHands.PRINTED
                ? "Les autres valeurs figurent parmi les remarques sur la monnaie, telles que relevées et converties."
                : "Les autres valeurs sont conservées dans les données de la monnaie.");
        return Passage.of(sentences);
    }
}
