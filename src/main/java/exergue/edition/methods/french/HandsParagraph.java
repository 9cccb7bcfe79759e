package exergue.edition.methods.french;

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
            return Passage.of(List.of("Le catalogue ne décrit aucune monnaie."));
        }
        String coins = Noun.COIN.count(tally.coins());
        if (hands.isEmpty()) {
            return Passage.of(List.of("Le catalogue décrit " + coins + ", sans aucune mesure."));
        }
        if (hands.size() == 1) {
            Hand only = hands.get(0);
            List<String> sentences = new ArrayList<>();
            sentences.add("Les mesures " + (tally.coins() == 1 ? "de l’unique monnaie" : "des " + coins)
                    + " proviennent d’une seule source" + Grammar.COLON + only.convention().title() + particulars(only)
                    + ".");
            sentences.addAll(HowMeasured.sentences(only, tally.style().form()));
            return Passage.of(sentences);
        }
        List<Passage> passages = new ArrayList<>(Passage.of(List.of("Le catalogue décrit " + coins + ", d’après "
                + Noun.SOURCE.count(hands.size()) + ".")));
        hands.forEach(hand -> passages.add(passage(hand, tally)));
        return passages;
    }

    private static Passage passage(Hand hand, Tally tally) {
        List<String> sentences = new ArrayList<>();
        String coins = Noun.COIN.count(hand.coins());
        sentences.add(particulars(hand) + Grammar.COLON
                + (hand.main() ? "source principale, avec des mesures pour " + coins : "mesures " + Grammar.of(coins))
                + Grammar.SEMICOLON + printed(hand, tally) + ".");
        sentences.addAll(HowMeasured.sentences(hand, tally.style().form()));
        return new Passage.Sentences(Passage.capital(hand.convention().title()), sentences);
    }

    private static String printed(Hand hand, Tally tally) {
        List<Kind> kinds = tally.style().printed().stream().filter(kind -> hand.printed(kind) > 0).toList();
        boolean words = kinds.stream().map(hand::printed).allMatch(Grammar.NUMBERS::inWords);
        List<String> shares = kinds.stream().map(kind -> Noun.of(kind).count(hand.printed(kind), words)).toList();
        return shares.isEmpty() ? "le catalogue n’en retient aucune" : "le catalogue en retient " + Grammar.list(shares);
    }

    /** " (A. Orr, 2024)", " (T. Hallowby, 1894 ; cité sous l’abréviation Hallowby)" */
    private static String particulars(Hand hand) {
        List<String> particulars = new ArrayList<>();
        hand.convention().by().ifPresent(particulars::add);
        hand.convention().when().ifPresent(particulars::add);
        List<String> parts = new ArrayList<>();
        if (!particulars.isEmpty()) {
            parts.add(String.join(", ", particulars));
        }
        hand.sign().ifPresent(sign -> parts.add("cité sous l’abréviation " + sign));
        return parts.isEmpty() ? "" : " (" + String.join(Grammar.SEMICOLON, parts) + ")";
    }
}
