package exergue.study.die;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Obverses in one row, reverses in another. */
record TwoRows(List<Die> obverses, List<Die> reverses) {

    TwoRows {
        obverses = List.copyOf(obverses);
        reverses = List.copyOf(reverses);
    }

    List<Die> row(DieSide side) {
        return side == DieSide.OBVERSE ? obverses : reverses;
    }

    TwoRows with(DieSide side, List<Die> row) {
        return side == DieSide.OBVERSE ? new TwoRows(row, reverses) : new TwoRows(obverses, row);
    }

    /**
     * How often straight lines between the rows cross: of the lines sorted by their upper end, the pairs whose lower ends are
     * the other way round. Counted with a tree of partial sums, in the manner of W. Barth, P. Mutzel and M. Jünger, Simple and
     * efficient bilayer cross counting, Journal of Graph Algorithms and Applications 8 (2004) (from memory).
     */
    int crossings(List<Combination> lines) {
        Map<Die, Integer> above = places(obverses);
        Map<Die, Integer> below = places(reverses);
        int[][] ends = lines.stream().map(line -> new int[] {above.get(line.pair().obverse()), below.get(line.pair().reverse())})
                .sorted(Comparator.comparingInt((int[] end) -> end[0]).thenComparingInt(end -> end[1])).toArray(int[][]::new);
        int[] sums = new int[reverses.size() + 1];
        int crossings = 0;
        for (int seen = 0; seen < ends.length; seen++) {
            crossings += seen - upTo(sums, ends[seen][1] + 1);
            for (int i = ends[seen][1] + 1; i < sums.length; i += i & -i) {
                sums[i]++;
            }
        }
        return crossings;
    }

    private static int upTo(int[] sums, int place) {
        int sum = 0;
        for (int i = place; i > 0; i -= i & -i) {
            sum += sums[i];
        }
        return sum;
    }

    static Map<Die, Integer> places(List<Die> row) {
        Map<Die, Integer> places = new HashMap<>();
        for (Die die : row) {
            places.put(die, places.size());
        }
        return places;
    }
}
