package exergue.study.die;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What the states of a die tell of the order of striking: with which dies it was coupled while it was fresh, and with which
 * when it was worn, flawed or recut.
 *
 * @param states two at least, the earliest first
 */
public record DieUsage(Die die, List<State> states) {

    public DieUsage {
        states = List.copyOf(states);
    }

    /**
     * One state of the die.
     *
     * @param number   from 1
     * @param flaw     the first words given for it
     * @param partners dies of the other side that it struck with in this state, in natural order
     * @param coins    ids, in natural order
     */
    public record State(int number, Optional<String> flaw, List<Die> partners, List<String> coins) {
        public State {
            partners = List.copyOf(partners);
            coins = List.copyOf(coins);
        }
    }

    /** First with one, later with another: an order of two dies that a third gives. */
    record Before(Die earlier, Die later) { }

    /** @param coins in natural order of their ids */
    static List<DieUsage> of(List<StruckCoin> coins) {
        Map<Die, Map<Integer, List<StruckCoin>>> recorded = new TreeMap<>();
        for (StruckCoin coin : coins) {
            for (DieSide side : DieSide.values()) {
                coin.of(side).filter(die -> die.state().isPresent()).ifPresent(die -> recorded
                        .computeIfAbsent(die.die(), any -> new TreeMap<>())
                        .computeIfAbsent(die.state().getAsInt(), any -> new ArrayList<>()).add(coin));
            }
        }
        return recorded.entrySet().stream().filter(entry -> entry.getValue().size() > 1)
                .map(entry -> new DieUsage(entry.getKey(), entry.getValue().entrySet().stream()
                        .map(state -> state(entry.getKey().side(), state.getKey(), state.getValue())).toList())).toList();
    }

    private static State state(DieSide side, int number, List<StruckCoin> coins) {
        SortedSet<Die> partners = new TreeSet<>();
        coins.forEach(coin -> coin.of(side.other()).map(DieOfCoin::die).ifPresent(partners::add));
        return new State(number, coins.stream().flatMap(coin -> coin.of(side).flatMap(DieOfCoin::flaw).stream()).findFirst(),
                List.copyOf(partners), coins.stream().map(StruckCoin::id).toList());
    }

    /** Dies of the other side that met this one in earlier states only, each with those that met it in later states only. */
    List<Before> order() {
        SortedMap<Die, Integer> first = new TreeMap<>();
        SortedMap<Die, Integer> last = new TreeMap<>();
        for (State state : states) {
            for (Die partner : state.partners()) {
                first.putIfAbsent(partner, state.number());
                last.put(partner, state.number());
            }
        }
        List<Before> order = new ArrayList<>();
        last.forEach((one, end) -> first.forEach((other, begin) -> {
            if (end < begin) {
                order.add(new Before(one, other));
            }
        }));
        return order;
    }
}
