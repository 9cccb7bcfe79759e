package exergue.review.consequence;

import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.NaturalOrder;
import exergue.model.Written;
import exergue.review.change.Consequence.DieLink;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/** Dies that link other dies than before: coins show it together with two or more of the other side (common practice, no source). */
final class DieLinks {

    private DieLinks() { }

    static List<DieLink> of(TwoStates states) {
        List<DieLink> links = new ArrayList<>(of("obverse", states, Coin.Dies::obverse, Coin.Dies::reverse));
        links.addAll(of("reverse", states, Coin.Dies::reverse, Coin.Dies::obverse));
        return links;
    }

    private interface Die extends Function<Coin.Dies, Optional<Written<String>>> { }

    private static List<DieLink> of(String side, TwoStates states, Die die, Die partner) {
        SortedMap<String, SortedSet<String>> old = partners(states.before(), die, partner);
        SortedMap<String, SortedSet<String>> now = partners(states.after(), die, partner);
        SortedSet<String> dies = new TreeSet<>(NaturalOrder.INSTANCE);
        dies.addAll(old.keySet());
        dies.addAll(now.keySet());
        List<DieLink> links = new ArrayList<>();
        for (String one : dies) {
            SortedSet<String> was = old.getOrDefault(one, new TreeSet<>());
            SortedSet<String> is = now.getOrDefault(one, new TreeSet<>());
            if (!was.equals(is) && Math.max(was.size(), is.size()) > 1) {
                links.add(new DieLink(side, one, List.copyOf(was), List.copyOf(is)));
            }
        }
        return links;
    }

    private static SortedMap<String, SortedSet<String>> partners(Catalogue catalogue, Die die, Die partner) {
        SortedMap<String, SortedSet<String>> partners = new TreeMap<>(NaturalOrder.INSTANCE);
        for (Coin coin : catalogue.coins()) {
            coin.dies().ifPresent(dies -> die.apply(dies).ifPresent(one -> partner.apply(dies).ifPresent(other ->
                    partners.computeIfAbsent(one.value(), any -> new TreeSet<>(NaturalOrder.INSTANCE)).add(other.value()))));
        }
        return partners;
    }
}
