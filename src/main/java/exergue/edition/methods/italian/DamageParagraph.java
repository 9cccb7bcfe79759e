package exergue.edition.methods.italian;

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
            String whose = damage.coins() == 1 ? "Il suo peso è" : "Dei loro pesi, "
                    + (n == 1 ? "uno è" : Grammar.NUMBERS.of(n) + " sono");
            sentences.add(whose + excluded(n, sign) + " dalle statistiche ponderali.");
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
        String ending = Grammar.ending(n);
        return (sign.isBlank() ? "" : " contrassegnat" + ending + " con " + sign + " ed") + " esclus" + ending;
    }

    private static String kinds(DamageTally damage) {
        int all = damage.kinds().stream().mapToInt(Tally.Count::times).sum();
        String kinds = String.join("; ", Noun.COIN.tallied(damage.kinds(), DamageParagraph::word));
        String twice = all > damage.coins() ? "; alcune in più modi" : "";
        String detail = damage.kinds().size() == 1 ? word(damage.kinds().get(0).thing()) : kinds + twice;
        return "Un danno o un’altra alterazione successiva alla coniazione è segnalato per "
                + Noun.COIN.count(damage.coins()) + " (" + detail + ").";
    }

    private static String word(Damage damage) {
        return BookWord.of(damage).in(Language.ITALIAN);
    }

    /** "I pesi del n. 2 (solo scheggiata al bordo) e del n. 7 (tosata in zecca) sono comunque conteggiati." */
    private static String sentence(List<Excepted> alike, String sign) {
        int coins = alike.stream().mapToInt(exception -> exception.numbers().size()).sum();
        String whose = Grammar.list(alike.stream().map(exception -> (exception.numbers().size() == 1 ? "del n." : "dei nn.")
                + Grammar.NO_BREAK + Grammar.list(exception.numbers()) + " (" + exception.why() + ")").toList());
        return Passage.capital(Noun.WEIGHT.the(coins)) + " " + whose + " " + Grammar.is(coins)
                + (alike.get(0).counts() ? " comunque conteggiat" + Grammar.ending(coins) + "."
                : (coins == 1 ? " anch’esso" : " anch’essi") + excluded(coins, sign)
                + ", benché non sia segnalato alcun danno.");
    }
}
