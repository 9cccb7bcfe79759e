package exergue.study.die;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Puts the dies of a chain in two rows so that few lines cross: each row in turn is sorted by where the partners of its dies
 * stand on average, and then neighbours change places where that saves crossings (K. Sugiyama, S. Tagawa and M. Toda, Methods
 * for visual understanding of hierarchical system structures, 1981; from memory). The best order met on the way is kept.
 * States that tell which die came first are heeded throughout.
 */
final class FewCrossings {

    private static final int SWEEPS = 24;
    /** So many sweeps without a better order, and no more are made. */
    private static final int IDLE = 4;
    /** Neighbours are gone through so often at most in one sweep. */
    private static final int ROUNDS = 8;

    private final List<Combination> lines;
    private final Precedence precedence;
    private final Map<Die, List<Die>> partners = new TreeMap<>();

    private FewCrossings(List<Combination> lines, Precedence precedence) {
        this.lines = lines;
        this.precedence = precedence;
        for (Combination line : lines) {
            partners.computeIfAbsent(line.pair().obverse(), any -> new ArrayList<>()).add(line.pair().reverse());
            partners.computeIfAbsent(line.pair().reverse(), any -> new ArrayList<>()).add(line.pair().obverse());
        }
    }

    /** @param lines the combinations of one chain, in natural order */
    static TwoRows arrange(List<Combination> lines, Precedence precedence) {
        FewCrossings arranging = new FewCrossings(lines, precedence);
        TwoRows best = null;
        int fewest = Integer.MAX_VALUE;
        for (TwoRows start : List.of(arranging.rows(arranging.partners.keySet()), arranging.rows(Walk.through(arranging.partners)))) {
            for (DieSide first : List.of(DieSide.REVERSE, DieSide.OBVERSE)) {
                TwoRows rows = start;
                int idle = 0;
                for (int sweep = 0; sweep < SWEEPS && idle < IDLE && fewest > 0; sweep++) {
                    int crossings = rows.crossings(lines);
                    idle++;
                    if (crossings < fewest) {
                        best = rows;
                        fewest = crossings;
                        idle = 0;
                    }
                    rows = arranging.sweep(rows, sweep % 2 == 0 ? first : first.other());
                }
            }
        }
        return best;
    }

    private TwoRows rows(Collection<Die> dies) {
        return new TwoRows(row(dies, DieSide.OBVERSE), row(dies, DieSide.REVERSE));
    }

    private List<Die> row(Collection<Die> dies, DieSide side) {
        return precedence.kept(dies.stream().filter(die -> die.side() == side).toList());
    }

    private TwoRows sweep(TwoRows rows, DieSide side) {
        Map<Die, Integer> others = TwoRows.places(rows.row(side.other()));
        Map<Die, int[]> ends = new HashMap<>();
        Map<Die, Double> middles = new HashMap<>();
        for (Die die : rows.row(side)) {
            int[] places = partners.get(die).stream().mapToInt(others::get).sorted().toArray();
            ends.put(die, places);
            middles.put(die, Arrays.stream(places).average().orElseThrow());
        }
        List<Die> sorted = rows.row(side).stream().sorted(Comparator.comparing(middles::get)).toList();
        return rows.with(side, switched(new ArrayList<>(precedence.kept(sorted)), ends));
    }

    /** Neighbours change places as long as that saves crossings. */
    private List<Die> switched(List<Die> row, Map<Die, int[]> ends) {
        boolean better = true;
        for (int round = 0; round < ROUNDS && better; round++) {
            better = false;
            for (int i = 0; i + 1 < row.size(); i++) {
                Die left = row.get(i);
                Die right = row.get(i + 1);
                if (crossings(ends.get(left), ends.get(right)) > crossings(ends.get(right), ends.get(left))
                        && !precedence.isSaid(left, right)) {
                    row.set(i, right);
                    row.set(i + 1, left);
                    better = true;
                }
            }
        }
        return row;
    }

    /** Between the lines of two neighbours: the pairs of which the left one's lower end lies to the right. Both are sorted. */
    private static int crossings(int[] left, int[] right) {
        int crossings = 0;
        int below = 0;
        for (int end : left) {
            while (below < right.length && right[below] < end) {
                below++;
            }
            crossings += below;
        }
        return crossings;
    }
}
