package exergue.edition.methods.english;

import exergue.edition.methods.DamageTally.Excepted;
import exergue.edition.methods.DamageTally;
import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.model.Damage;
import java.util.ArrayList;
import java.util.List;

/** Damaged coins, and which weights stay out of statistics, with every exception and its reason. */
final class DamageParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        DamageTally damage = tally.damage();
        List<String> sentences = new ArrayList<>();
        String marked = tally.style().signs().damaged().isBlank() ? ""
                : " marked " + tally.style().signs().damaged() + " and";
        if (damage.coins() > 0) {
            sentences.add(kinds(damage));
        }
        if (damage.leftOut() > 0) {
            sentences.add((damage.coins() == 1 ? "Its weight is" : damage.leftOut() == 1 ? "One weight of theirs is" : "Of their weights, "
                    + Grammar.number(damage.leftOut()) + " are") + marked + " left out of weight statistics.");
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
        String kinds = String.join("; ", Grammar.tallied(damage.kinds(), Damage::word));
        String twice = all > damage.coins() ? "; some coins in more than one way" : "";
        String detail = damage.kinds().size() == 1 ? damage.kinds().get(0).thing().word() : kinds + twice;
        return "Damage or another change since striking is recorded for " + Grammar.count(damage.coins(), "coin")
                + " (" + detail + ").";
    }

    /** "The weights of no. 2 (only a chip) and no. 7 (cut at the mint) are counted all the same." */
    private static String sentence(List<Excepted> alike, String marked) {
        int coins = alike.stream().mapToInt(exception -> exception.numbers().size()).sum();
        String whose = Grammar.list(alike.stream().map(exception -> (exception.numbers().size() == 1 ? "no." : "nos")
                + Grammar.NO_BREAK + Grammar.list(exception.numbers()) + " (" + exception.why() + ")").toList());
        return "The " + Grammar.agree(coins, "weight") + " of " + whose + " " + Grammar.is(coins)
                + (alike.get(0).counts() ? " counted all the same."
                : marked + " left out too, although no damage is recorded.");
    }
}
