package exergue.edition.methods.english;

import static exergue.edition.methods.english.Grammar.count;
import static exergue.edition.methods.english.Grammar.list;
import static exergue.edition.methods.english.Grammar.noun;

import exergue.edition.methods.Hand;
import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Tally;
import exergue.measure.Kind;
import java.util.ArrayList;
import java.util.List;

/** Where the figures come from: who measured, when, how many of what, with what and how. */
final class HandsParagraph implements MethodsParagraph {

    @Override
    public List<String> sentences(Tally tally) {
        List<String> sentences = new ArrayList<>();
        List<Hand> hands = tally.hands();
        if (tally.coins() == 0) {
            return List.of("The catalogue describes no coins.");
        }
        if (hands.isEmpty()) {
            return List.of("The catalogue describes " + count(tally.coins(), "coin") + " without any measurements.");
        }
        if (hands.size() == 1) {
            sentences.add("The figures of the " + (tally.coins() == 1 ? "one coin" : count(tally.coins(), "coin"))
                    + " come from " + title(hands.get(0)) + ".");
            sentences.addAll(HowMeasured.sentences(hands.get(0), false));
            return sentences;
        }
        sentences.add("The catalogue describes " + count(tally.coins(), "coin") + ", with figures from "
                + count(hands.size(), "source") + ".");
        for (Hand hand : hands) {
            sentences.add(share(hand, tally));
            sentences.addAll(HowMeasured.sentences(hand, true));
        }
        return sentences;
    }

    private static String share(Hand hand, Tally tally) {
        if (hand.figuresPrinted() == 0) {
            return "There are also figures from " + title(hand) + " for " + count(hand.coins(), "coin")
                    + ", none of which is printed.";
        }
        List<String> shares = new ArrayList<>();
        for (Kind kind : tally.style().order()) {
            if (hand.printed(kind) > 0) {
                shares.add(count(hand.printed(kind), noun(kind)));
            }
        }
        String comes = shares.size() == 1 && hand.figuresPrinted() == 1 ? " comes " : " come ";
        return "From " + title(hand) + (hand.main() ? ", the main source, with figures" : ", with figures") + " for "
                + count(hand.coins(), "coin") + "," + comes + list(shares) + ".";
    }

    /** "measurements at the bench (Judith Carrowmere, 2022–2024)" */
    private static String title(Hand hand) {
        List<String> particulars = new ArrayList<>();
        hand.convention().by().ifPresent(particulars::add);
        hand.convention().when().ifPresent(particulars::add);
        String what = String.join(", ", particulars);
        String cited = hand.work().map(work -> "cited as " + work.sign().value()).orElse("");
        String both = what.isEmpty() || cited.isEmpty() ? what + cited : what + "; " + cited;
        return hand.convention().title() + (both.isEmpty() ? "" : " (" + both + ")");
    }
}
