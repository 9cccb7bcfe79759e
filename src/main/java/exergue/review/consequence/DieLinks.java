package exergue.review.consequence;

import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.NaturalOrder;
import exergue.model.Written;
import exergue.review.change.Consequence.DieLink;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Dies that link other dies than before: coins show such a die together with two or more of the other side (common
 * practice, no source).
 */
final class DieLinks {

    private DieLinks() { }

    static List<DieLink> of(TwoStates states) {
        List<DieLink> links = new ArrayList<>(of("obverse", states, Coin.Dies::obverse, Coin.Dies::reverse));
        links.addAll(of("reverse", states, Coin.Dies::reverse, Coin.Dies::obverse));
        return links;
    }

    private interface Die extends Function<Coin.Dies, Optional<Written<String>>> { }

    private static List<DieLink> of(String side, TwoStates states, Die die, Die partner) {
        Map<String, SortedSet<String>> old = partners(states.before(), die, partner);
        Map<String, SortedSet<String>> now = partners(states.after(), die, partner);
        SortedSet<String> changed = new TreeSet<>(NaturalOrder.INSTANCE);
        Stream.of(old, now).flatMap(dies -> dies.keySet().stream()).filter(one -> !of(one, old).equals(of(one, now))
                && Math.max(of(one, old).size(), of(one, now).size()) > 1).forEach(changed::add);
        return changed.stream().map(one -> new DieLink(side, one, List.copyOf(of(one, old)), List.copyOf(of(one, now)))).toList();
    }

    private static SortedSet<String> of(String die, Map<String, SortedSet<String>> partners) {
        return partners.getOrDefault(die, Collections.emptySortedSet());
    }

    private static Map<String, SortedSet<String>> partners(Catalogue catalogue, Die die, Die partner) {
        Map<String, SortedSet<String>> partners = new LinkedHashMap<>();
        for (Coin coin : catalogue.coins()) {
            coin.dies().ifPresent(dies -> die.apply(dies).ifPresent(one -> partner.apply(dies).ifPresent(other ->
                    partners.computeIfAbsent(one.value(), any -> new TreeSet<>(NaturalOrder.INSTANCE)).add(other.value()))));
        }
        return partners;
    }
}
