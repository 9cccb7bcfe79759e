package exergue.edition.methods.italian;

import exergue.edition.methods.Hand;
import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.measure.Kind;
import java.util.ArrayList;
import java.util.List;

/** Where the figures come from, a paragraph a hand: who measured, when, how many of what, with what and how. */
final class HandsParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        List<Hand> hands = tally.hands();
        if (tally.coins() == 0) {
            return Passage.of(List.of("Il catalogo non descrive alcuna moneta."));
        }
        String coins = Noun.COIN.count(tally.coins());
        if (hands.isEmpty()) {
            return Passage.of(List.of("Il catalogo descrive " + coins + ", senza alcuna misura."));
        }
        if (hands.size() == 1) {
            Hand only = hands.get(0);
            List<String> sentences = new ArrayList<>();
            sentences.add("Le misure " + (tally.coins() == 1 ? "dell’unica moneta" : "delle " + coins)
                    + " provengono da una sola fonte: " + only.convention().title() + particulars(only) + ".");
            sentences.addAll(HowMeasured.sentences(only, tally.style().form()));
            return Passage.of(sentences);
        }
        List<Passage> passages = new ArrayList<>(Passage.of(List.of("Il catalogo descrive " + coins + ", sulla base di "
                + Noun.SOURCE.count(hands.size()) + ".")));
        hands.forEach(hand -> passages.add(passage(hand, tally)));
        return passages;
    }

    private static Passage passage(Hand hand, Tally tally) {
        List<String> sentences = new ArrayList<>();
        sentences.add(particulars(hand) + ": " + (hand.main() ? "fonte principale, con misure per " : "misure di ")
                + Noun.COIN.count(hand.coins()) + "; " + printed(hand, tally) + ".");
        sentences.addAll(HowMeasured.sentences(hand, tally.style().form()));
        return new Passage.Sentences(Passage.capital(hand.convention().title()), sentences);
    }

    private static String printed(Hand hand, Tally tally) {
        List<Kind> kinds = tally.style().printed().stream().filter(kind -> hand.printed(kind) > 0).toList();
        boolean words = kinds.stream().map(hand::printed).allMatch(Grammar.NUMBERS::inWords);
        List<String> shares = kinds.stream().map(kind -> Noun.of(kind).count(hand.printed(kind), words)).toList();
        return shares.isEmpty() ? "il catalogo non ne riporta alcuna" : "il catalogo ne riporta " + Grammar.list(shares);
    }

    /** " (A. Orr, 2024)", " (T. Hallowby, 1894; citato come Hallowby)" */
    private static String particulars(Hand hand) {
        List<String> particulars = new ArrayList<>();
        hand.convention().by().ifPresent(particulars::add);
        hand.convention().when().ifPresent(particulars::add);
        List<String> parts = new ArrayList<>();
        if (!particulars.isEmpty()) {
            parts.add(String.join(", ", particulars));
        }
        hand.sign().ifPresent(sign -> parts.add("citato come " + sign));
        return parts.isEmpty() ? "" : " (" + String.join("; ", parts) + ")";
    }
}
