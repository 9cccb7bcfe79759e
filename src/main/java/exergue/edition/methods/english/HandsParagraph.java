package exergue.edition.methods.english;

import static exergue.edition.methods.english.Grammar.count;
import static exergue.edition.methods.english.Grammar.list;
import static exergue.edition.methods.english.Grammar.noun;

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
            return Passage.of(List.of("The catalogue describes no coins."));
        }
        if (hands.isEmpty()) {
            return Passage.of(List.of("The catalogue describes " + count(tally.coins(), "coin")
                    + " without any measurements."));
        }
        if (hands.size() == 1) {
            Hand only = hands.get(0);
            List<String> sentences = new ArrayList<>();
            sentences.add("The figures of the " + (tally.coins() == 1 ? "one coin" : count(tally.coins(), "coin"))
                    + " come from " + only.convention().title() + particulars(only) + ".");
            sentences.addAll(HowMeasured.sentences(only, tally.style().form()));
            return Passage.of(sentences);
        }
        List<Passage> passages = new ArrayList<>(Passage.of(List.of("The catalogue describes "
                + count(tally.coins(), "coin") + ", with figures from " + count(hands.size(), "source") + ".")));
        hands.forEach(hand -> passages.add(passage(hand, tally)));
        return passages;
    }

    private static Passage passage(Hand hand, Tally tally) {
        List<String> sentences = new ArrayList<>();
        sentences.add(particulars(hand) + ": " + (hand.main() ? "the main source, with " : "") + "figures for "
                + count(hand.coins(), "coin") + "; " + printed(hand, tally) + ".");
        sentences.addAll(HowMeasured.sentences(hand, tally.style().form()));
        return new Passage.Sentences(Passage.capital(hand.convention().title()), sentences);
    }

    private static String printed(Hand hand, Tally tally) {
        if (hand.figuresPrinted() == 0) {
            return "none of them is printed";
        }
        List<Kind> kinds = tally.style().printed().stream().filter(kind -> hand.printed(kind) > 0).toList();
        List<String> numbers = Grammar.series(kinds.stream().map(hand::printed).toList());
        List<String> shares = new ArrayList<>();
        for (int i = 0; i < kinds.size(); i++) {
            shares.add(numbers.get(i) + " " + Grammar.agree(hand.printed(kinds.get(i)), noun(kinds.get(i))));
        }
        return list(shares) + " " + Grammar.is(hand.figuresPrinted()) + " printed";
    }

    /** " (Judith Carrowmere, 2022–2024)", " (T. Hallowby, 1894; cited as Hallowby)" */
    private static String particulars(Hand hand) {
        List<String> particulars = new ArrayList<>();
        hand.convention().by().ifPresent(particulars::add);
        hand.convention().when().ifPresent(particulars::add);
        String what = String.join(", ", particulars);
        String cited = hand.sign().map(sign -> "cited as " + sign).orElse("");
        String both = what.isEmpty() || cited.isEmpty() ? what + cited : what + "; " + cited;
        return both.isEmpty() ? "" : " (" + both + ")";
    }
}
