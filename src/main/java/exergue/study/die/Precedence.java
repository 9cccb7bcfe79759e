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
        contradicted = later.keySet().stream().filter(this::comesBeforeItself).toList();
    }

    static Precedence of(Collection<DieUsage.Before> order) {
        return new Precedence(order);
    }

    /** Dies that would have to stand before themselves, in natural order. */
    List<Die> contradicted() {
        return contradicted;
    }

    /** Of neighbours that is all that counts: what stood between them would part them. */
    boolean isSaid(Die earlier, Die other) {
        return later.getOrDefault(earlier, Set.of()).contains(other);
    }

    private boolean comesBeforeItself(Die die) {
        Set<Die> reached = new HashSet<>();
        List<Die> todo = new ArrayList<>(later.get(die));
        while (!todo.isEmpty()) {
            Die next = todo.remove(todo.size() - 1);
            if (next.equals(die)) {
                return true;
            }
            if (reached.add(next)) {
                todo.addAll(later.getOrDefault(next, Set.of()));
            }
        }
        return false;
    }

    /** The same dies, those that must go first first, otherwise as they stood; of dies that contradict each other the first goes on. */
    List<Die> kept(List<Die> wanted) {
        if (later.isEmpty()) {
            return wanted;
        }
        Map<Die, Integer> places = TwoRows.places(wanted);
        int[] waiting = new int[wanted.size()];
        for (Die die : wanted) {
            followers(die, places).forEach(follower -> waiting[follower]++);
        }
        TreeSet<Integer> rest = new TreeSet<>(places.values());
        TreeSet<Integer> free = new TreeSet<>(rest);
        free.removeIf(place -> waiting[place] > 0);
        List<Die> ordered = new ArrayList<>();
        while (!rest.isEmpty()) {
            int next = free.isEmpty() ? rest.first() : free.first();
            free.remove(next);
            rest.remove(next);
            ordered.add(wanted.get(next));
            for (int follower : followers(wanted.get(next), places)) {
                waiting[follower]--;
                if (waiting[follower] == 0 && rest.contains(follower)) {
                    free.add(follower);
                }
            }
        }
        return ordered;
    }

    private List<Integer> followers(Die die, Map<Die, Integer> places) {
        return later.getOrDefault(die, Set.of()).stream().filter(other -> !other.equals(die)).map(places::get)
                .filter(place -> place != null).toList();
    }
}
