package exergue.edition;

import exergue.edition.Plate.Pair;
import exergue.edition.Plate.Row;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Pairs of pictures in rows, and rows on plates, in their order. There are as few plates as the pictures need; of all ways
 * to fill these the one is taken in which the plates are filled most evenly, the last like the others, and their rows best.
 * Then the white that is left is shared out between the rows of each plate, from top to foot.
 */
final class PlateLayout {

    private static final BigDecimal BETWEEN_PAIRS = new BigDecimal("6");
    private static final BigDecimal LEAST_ABOVE = new BigDecimal("4");
    private static final BigDecimal MOST_ABOVE = new BigDecimal("22");
    private static final BigDecimal MOST_ABOVE_ALONE = new BigDecimal("12");
    private static final int MOST_PLACES = 6;
    /** A plate more weighs more than any unevenness. */
    private static final long PLATE = 1_000_000_000_000L;
    /** What a row counts that is all but empty, in hundredths of a millimetre of height. */
    private static final long UNEVEN = 27_000;
    private static final long NEVER = Long.MAX_VALUE;

    private final List<Pair> pairs;
    private final PlateSpace space;

    private PlateLayout(List<Pair> pairs, PlateSpace space) {
        this.pairs = pairs;
        this.space = space;
    }

    /** The rows of each plate. */
    static List<List<Row>> of(List<Pair> pairs, PlateSpace space) {
        return new PlateLayout(List.copyOf(pairs), space).plates();
    }

    /** The best way to fill plates with the pairs from each on, found from the last pair to the first. */
    private List<List<Row>> plates() {
        int count = pairs.size();
        long[] cost = new long[count + 1];
        int[] next = new int[count + 1];
        boolean[] crowded = new boolean[count + 1];
        for (int from = count - 1; from >= 0; from--) {
            cost[from] = NEVER;
            PlateRows even = new PlateRows(from, UNEVEN);
            PlateRows low = new PlateRows(from, 0);
            for (int to = from + 1; to <= count && low.fits(to); to++) {
                boolean tight = !even.fits(to);
                long here = (tight ? low : even).unevenness(to) + PLATE;
                if (cost[to] != NEVER && here + cost[to] < cost[from]) {
                    cost[from] = here + cost[to];
                    next[from] = to;
                    crowded[from] = tight;
                }
            }
        }
        List<List<Row>> plates = new ArrayList<>();
        for (int from = 0; from < count; from = next[from]) {
            BigDecimal most = from == 0 && next[from] == count ? MOST_ABOVE_ALONE : MOST_ABOVE;
            plates.add(spaced(new PlateRows(from, crowded[from] ? 0 : UNEVEN).rows(next[from]), height(next[from]), most));
        }
        return plates;
    }

    private BigDecimal height(int to) {
        return space.height(to == pairs.size());
    }

    /** The best rows of a plate that begins with this pair, for every pair it could end before. */
    private final class PlateRows {

        private final int from;
        private final long uneven;
        private final List<Long> cost = new ArrayList<>(List.of(0L));
        private final List<BigDecimal> filled = new ArrayList<>(List.of(BigDecimal.ZERO));
        private final List<Integer> rowFrom = new ArrayList<>(List.of(0));

        /** @param uneven what rows count that have places left; 0 for rows that take the least height */
        PlateRows(int from, long uneven) {
            this.from = from;
            this.uneven = uneven;
        }

        /** False from where on nothing more goes onto the plate; a pair too large for any plate stands alone on one. */
        boolean fits(int to) {
            fill(to);
            return to == from + 1 || filled.get(to - from).compareTo(space.height(to == pairs.size())) <= 0;
        }

        long unevenness(int to) {
            BigDecimal white = height(to).subtract(filled.get(to - from)).max(BigDecimal.ZERO);
            return white.multiply(white).longValue() + cost.get(to - from);
        }

        List<Row> rows(int to) {
            fill(to);
            List<Row> rows = new ArrayList<>();
            for (int end = to; end > from; end = from + rowFrom.get(end - from)) {
                rows.add(row(from + rowFrom.get(end - from), end));
            }
            Collections.reverse(rows);
            return to == pairs.size() ? withLastRowInLine(rows) : rows;
        }

        private void fill(int to) {
            for (int end = from + cost.size(); end <= to; end++) {
                cost.add(NEVER);
                filled.add(BigDecimal.ZERO);
                rowFrom.add(0);
                for (int begin = end - 1; begin >= Math.max(from, end - MOST_PLACES) && (begin == end - 1 || fit(begin, end, end - begin)); begin--) {
                    take(begin, end);
                }
            }
        }

        /** Rows count by the height they take, and by how many more pairs there would have been room for. */
        private void take(int begin, int end) {
            BigDecimal row = pairs.subList(begin, end).stream().map(Pair::height).reduce(BigDecimal.ZERO, BigDecimal::max)
                    .add(PlateSpace.NUMBER_BELOW).add(begin == from ? BigDecimal.ZERO : LEAST_ABOVE);
            int places = most(begin, end);
            int empty = places - (end - begin);
            long here = cost.get(begin - from) + row.multiply(BigDecimal.TEN).longValue() * 10 + uneven * empty * empty / (places * places);
            if (here < cost.get(end - from)) {
                cost.set(end - from, here);
                filled.set(end - from, filled.get(begin - from).add(row));
                rowFrom.set(end - from, begin - from);
            }
        }
    }

    private Row row(int begin, int end) {
        List<Pair> row = pairs.subList(begin, end);
        BigDecimal height = row.stream().map(Pair::height).reduce(BigDecimal.ZERO, BigDecimal::max);
        return new Row(row, BigDecimal.ZERO, height, cell(row.size()), row.size());
    }

    /** The very last row may have fewer pairs than the one above; then it stands on the same axes and ends before the edge. */
    private List<Row> withLastRowInLine(List<Row> rows) {
        Row last = rows.get(rows.size() - 1);
        int above = rows.size() == 1 ? 0 : rows.get(rows.size() - 2).places();
        if (above > last.places() && fit(pairs.size() - last.places(), pairs.size(), above)) {
            rows.set(rows.size() - 1, new Row(last.pairs(), last.above(), last.height(), cell(above), above));
        }
        return rows;
    }

    /** How many places of equal width there are in a row of these pairs. */
    private int most(int begin, int end) {
        int places = MOST_PLACES;
        while (places > end - begin && !fit(begin, end, places)) {
            places--;
        }
        return places;
    }

    private boolean fit(int begin, int end, int places) {
        return pairs.subList(begin, end).stream().allMatch(pair -> pair.width().add(BETWEEN_PAIRS).compareTo(cell(places)) <= 0);
    }

    private BigDecimal cell(int places) {
        return space.width().divide(new BigDecimal(places), 2, RoundingMode.DOWN);
    }

    /** The white that is left, in equal parts between the rows, but no more than this between two of them. */
    private static List<Row> spaced(List<Row> rows, BigDecimal height, BigDecimal most) {
        BigDecimal taken = rows.stream().map(row -> row.height().add(PlateSpace.NUMBER_BELOW)).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal between = rows.size() == 1 ? BigDecimal.ZERO
                : height.subtract(taken).divide(new BigDecimal(rows.size() - 1), 2, RoundingMode.DOWN).min(most);
        List<Row> spaced = new ArrayList<>();
        for (Row row : rows) {
            spaced.add(new Row(row.pairs(), spaced.isEmpty() ? BigDecimal.ZERO : between, row.height(), row.cell(), row.places()));
        }
        return List.copyOf(spaced);
    }
}
