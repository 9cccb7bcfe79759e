package exergue.edition.methods.german;

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
        sentences.add("Für " + Noun.COIN.accusative(tally.readTwice()) + " liegen Werte aus mehreren Quellen vor.");
        String printed = "Gedruckt ist " + (tally.readTwice() == 1 ? "" : "jeweils ");
        List<String> preferred = tally.preferred();
        if (preferred.size() > 1) {
            sentences.add(printed + "der erste verfügbare Wert in dieser Reihenfolge der Quellen: "
                    + String.join("; ", preferred) + ".");
        } else if (preferred.size() == 1) {
            sentences.add(printed + "der Wert der bevorzugten Quelle (" + preferred.get(0)
                    + "), soweit vorhanden, sonst der erste, den der Eintrag nennt.");
        } else {
            sentences.add(printed + "der erste Wert, den der Eintrag nennt.");
        }
        sentences.add(tally.style().otherHands() == HouseStyle.OtherHands.PRINTED
                ? "Die übrigen Werte folgen unter den Bemerkungen zur Münze, wie überliefert und wie umgerechnet."
                : "Die übrigen Werte bleiben in den Daten der Münze erhalten.");
        return Passage.of(sentences);
    }
}
