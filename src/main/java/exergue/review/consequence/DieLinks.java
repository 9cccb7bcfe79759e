package exergue.review.consequence;

import exergue.check.CoinOfType;
import exergue.model.Catalogue;
import exergue.model.HouseStyle.DieNames;
import exergue.model.NaturalOrder;
import exergue.review.change.Consequence.DieLink;
import exergue.study.die.Die;
import exergue.study.die.DieOfCoin;
import exergue.study.die.DieSide;
import exergue.study.die.StruckCoin;
import exergue.study.die.StruckCoins;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Dies that link other dies than before: coins show such a die together with two or more of the other side (common
 * practice, no source). Both states are read by the rule that the new house style has for the names of dies, so that
 * another rule alone changes no link.
 */
final class DieLinks {

    private DieLinks() { }

    static List<DieLink> of(TwoStates states) {
        List<DieLink> links = new ArrayList<>();
        for (DieSide side : DieSide.values()) {
            links.addAll(of(side, states));
        }
        return links;
    }

    private static List<DieLink> of(DieSide side, TwoStates states) {
        DieNames names = states.after().style().dieNames();
        SortedMap<Die, SortedSet<String>> old = partners(states.before(), names, side);
        SortedMap<Die, SortedSet<String>> now = partners(states.after(), names, side);
        SortedSet<Die> changed = new TreeSet<>();
        Stream.of(old, now).flatMap(dies -> dies.keySet().stream()).filter(one -> !of(one, old).equals(of(one, now))
                && Math.max(of(one, old).size(), of(one, now).size()) > 1).forEach(changed::add);
        return changed.stream().map(one -> new DieLink(side == DieSide.OBVERSE ? "obverse" : "reverse", name(one),
                List.copyOf(of(one, old)), List.copyOf(of(one, now)))).toList();
    }

    /** "O12", or "O12 of arkeneia" where another mint or type has an O12 of its own. */
    private static String name(Die die) {
        return die.within().isEmpty() ? die.name() : die.name() + " of " + die.within();
    }

    private static SortedSet<String> of(Die die, SortedMap<Die, SortedSet<String>> partners) {
        return partners.getOrDefault(die, Collections.emptySortedSet());
    }

    /** The names of the dies of the other side; they count within the same mint or type. */
    private static SortedMap<Die, SortedSet<String>> partners(Catalogue catalogue, DieNames names, DieSide side) {
        StruckCoins struck = new StruckCoins(names);
        SortedMap<Die, SortedSet<String>> partners = new TreeMap<>();
        for (CoinOfType pair : CoinOfType.all(catalogue)) {
            StruckCoin coin = struck.of(pair.coin(), pair.type());
            coin.of(side).map(DieOfCoin::die).ifPresent(one -> coin.of(side.other()).map(DieOfCoin::die).ifPresent(other ->
                    partners.computeIfAbsent(one, any -> new TreeSet<>(NaturalOrder.INSTANCE)).add(other.name())));
        }
        return partners;
    }
}
