package exergue.edition.methods.french;

import exergue.edition.methods.DamageTally;
import exergue.edition.methods.DamageTally.Excepted;
import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.model.BookWord;
import exergue.model.Damage;
import exergue.model.Language;
import java.util.ArrayList;
import java.util.List;

/** Damaged coins, and which weights stay out of statistics, with every exception and its reason. */
final class DamageParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        DamageTally damage = tally.damage();
        String sign = tally.style().signs().damaged();
        List<String> sentences = new ArrayList<>();
        if (damage.coins() > 0) {
            sentences.add(kinds(damage));
        }
        if (damage.leftOut() > 0) {
            int n = damage.leftOut();
            String whose = damage.coins() == 1 ? "Son poids est" : "Parmi leurs poids, "
                    + Noun.WEIGHT.number(n) + (n == 1 ? " est" : " sont");
            sentences.add(whose + excluded(n, sign) + " des statistiques pondérales.");
        }
        for (boolean counts : List.of(true, false)) {
            List<Excepted> alike = damage.exceptions().stream().filter(one -> one.counts() == counts).toList();
            if (!alike.isEmpty()) {
                sentences.add(sentence(alike, sign));
            }
        }
        return Passage.of(sentences);
    }

    private static String excluded(int n, String sign) {
        String plural = n == 1 ? "" : "s";
        return (sign.isBlank() ? "" : " marqué" + plural + " " + sign + " et") + " exclu" + plural;
    }

    private static String kinds(DamageTally damage) {
        int all = damage.kinds().stream().mapToInt(Tally.Count::times).sum();
        String kinds = String.join(Grammar.SEMICOLON, Noun.COIN.tallied(damage.kinds(), DamageParagraph::word));
        String twice = all > damage.coins() ? Grammar.SEMICOLON + "certaines de plusieurs façons" : "";
        String detail = damage.kinds().size() == 1 ? word(damage.kinds().get(0).thing()) : kinds + twice;
        return "Un dommage ou une autre altération survenue depuis la frappe est signalé pour "
                + Noun.COIN.count(damage.coins()) + " (" + detail + ").";
    }

    private static String word(Damage damage) {
        return BookWord.of(damage).in(Language.FRENCH);
    }

    /** "Les poids du n° 2 (une ébréchure seulement) et du n° 7 (rogné à l’atelier) sont comptés malgré tout." */
    private static String sentence(List<Excepted> alike, String sign) {
        int coins = alike.stream().mapToInt(exception -> exception.numbers().size()).sum();
        String whose = Grammar.list(alike.stream().map(exception -> (exception.numbers().size() == 1 ? "du n°" : "des nos")
                + Grammar.NO_BREAK + Grammar.list(exception.numbers()) + " (" + exception.why() + ")").toList());
        return Passage.capital(Noun.WEIGHT.the(coins)) + " " + whose + " " + Grammar.is(coins)
                + (alike.get(0).counts() ? (coins == 1 ? " compté" : " comptés") + " malgré tout."
                : " également" + excluded(coins, sign) + ", bien qu’aucun dommage ne soit signalé.");
    }
}
