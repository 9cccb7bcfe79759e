package exergue.study.die;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Which dies must stand before which, as far as states tell. */
final class Precedence {

    private final Map<Die, Set<Die>> later = new TreeMap<>();
    private final List<Die> contradicted;

    private Precedence(Collection<DieUsage.Before> order) {
        order.forEach(before -> later.computeIfAbsent(before.earlier(), any -> new TreeSet<>()).add(before.later()));
        contradicted = later.keySet().stream().filter(die -> comesBefore(die, die)).toList();
    }

    static Precedence of(Collection<DieUsage.Before> order) {
        return new Precedence(order);
    }

    /** Dies that would have to stand before themselves, in natural order. */
    List<Die> contradicted() {
        return contradicted;
    }

    boolean comesBefore(Die earlier, Die other) {
        Set<Die> reached = new HashSet<>();
        List<Die> todo = new ArrayList<>(later.getOrDefault(earlier, Set.of()));
        while (!todo.isEmpty()) {
            Die die = todo.remove(todo.size() - 1);
            if (die.equals(other)) {
                return true;
            }
            if (reached.add(die)) {
                todo.addAll(later.getOrDefault(die, Set.of()));
            }
        }
        return false;
    }

    /** The same dies, those that must go first first, otherwise as they stood; dies that contradict each other keep their places. */
    List<Die> kept(List<Die> wanted) {
        if (later.isEmpty()) {
            return wanted;
        }
        List<Die> rest = new ArrayList<>(wanted);
        List<Die> ordered = new ArrayList<>();
        while (!rest.isEmpty()) {
            Die next = rest.stream().filter(die -> rest.stream().noneMatch(other -> isBlocked(other, die))).findFirst()
                    .orElse(rest.get(0));
            ordered.add(next);
            rest.remove(next);
        }
        return ordered;
    }

    private boolean isBlocked(Die other, Die die) {
        return !other.equals(die) && later.getOrDefault(other, Set.of()).contains(die);
    }
}
