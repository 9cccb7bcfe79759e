package exergue.edition.methods.german;

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
        String marked = sign.isBlank() ? "" : " mit " + sign + " bezeichnet und";
        List<String> sentences = new ArrayList<>();
        if (damage.coins() > 0) {
            sentences.add(kinds(damage));
        }
        if (damage.leftOut() > 0) {
            sentences.add((damage.coins() == 1 ? "Ihr Gewicht ist" : damage.leftOut() == 1 ? "Von ihren Gewichten ist eines"
                    : "Von ihren Gewichten sind " + Grammar.NUMBERS.of(damage.leftOut())) + marked
                    + " aus der Gewichtsstatistik ausgeschlossen.");
        }
        for (boolean counts : List.of(true, false)) {
            List<Excepted> alike = damage.exceptions().stream().filter(one -> one.counts() == counts).toList();
            if (!alike.isEmpty()) {
                sentences.add(sentence(alike, marked));
            }
        }
        return Passage.of(sentences);
    }

    private static String kinds(DamageTally damage) {
        int all = damage.kinds().stream().mapToInt(Tally.Count::times).sum();
        String kinds = String.join("; ", Noun.COIN.tallied(damage.kinds(), DamageParagraph::word));
        String twice = all > damage.coins() ? "; manche in mehrfacher Weise" : "";
        String detail = damage.kinds().size() == 1 ? word(damage.kinds().get(0).thing()) : kinds + twice;
        return "Eine Beschädigung oder sonstige Veränderung seit der Prägung ist für "
                + Noun.COIN.accusative(damage.coins()) + " vermerkt (" + detail + ").";
    }

    private static String word(Damage damage) {
        return BookWord.of(damage).in(Language.GERMAN);
    }

    /** "Die Gewichte von Nr. 2 (nur am Rand ausgebrochen) und Nr. 7 (im Münzamt beschnitten) zählen dennoch." */
    private static String sentence(List<Excepted> alike, String marked) {
        int coins = alike.stream().mapToInt(exception -> exception.numbers().size()).sum();
        String whose = Grammar.list(alike.stream().map(exception -> "Nr." + Grammar.NO_BREAK
                + Grammar.list(exception.numbers()) + " (" + exception.why() + ")").toList());
        String subject = Passage.capital(Noun.WEIGHT.the(coins)) + " von " + whose;
        return alike.get(0).counts() ? subject + (coins == 1 ? " zählt dennoch." : " zählen dennoch.")
                : subject + " " + Grammar.is(coins) + " ebenfalls" + marked + " ausgeschlossen, obwohl keine Beschädigung "
                + "vermerkt ist.";
    }
}
