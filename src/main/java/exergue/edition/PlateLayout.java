package exergue.edition;

import exergue.edition.Plate.Pair;
import exergue.edition.Plate.Row;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * Pairs of pictures in rows, and rows on plates, as the usual page of the templates leaves room for them. A row has as
 * many places of equal width as its widest pair allows. A full plate is filled from top to foot; the last one keeps the
 * distances of the one before. Pictures are taken to be as high as they are wide, as those of coins are.
 */
final class PlateLayout {

    private static final BigDecimal WIDTH = new BigDecimal("158");
    private static final BigDecimal HEIGHT = new BigDecimal("203");
    /** The fixed small gap between obverse and reverse. */
    private static final BigDecimal GAP = new BigDecimal("1.5");
    private static final BigDecimal BETWEEN_PAIRS = new BigDecimal("6");
    private static final BigDecimal NUMBER_BELOW = new BigDecimal("5");
    private static final BigDecimal LEAST_ABOVE = new BigDecimal("5");
    private static final BigDecimal MOST_ABOVE = new BigDecimal("22");
    private static final int MOST_PLACES = 4;

    private PlateLayout() { }

    /** The rows of each plate. */
    static List<List<Row>> of(List<Pair> pairs) {
        List<List<Row>> plates = new ArrayList<>();
        List<Row> plate = new ArrayList<>();
        BigDecimal filled = BigDecimal.ZERO;
        for (Row row : rows(pairs)) {
            BigDecimal wanted = row.height().add(NUMBER_BELOW);
            BigDecimal least = plate.isEmpty() ? wanted : wanted.add(LEAST_ABOVE);
            if (!plate.isEmpty() && filled.add(least).compareTo(HEIGHT) > 0) {
                plates.add(spaced(plate, MOST_ABOVE));
                plate = new ArrayList<>();
                filled = BigDecimal.ZERO;
                least = wanted;
            }
            plate.add(row);
            filled = filled.add(least);
        }
        if (!plate.isEmpty()) {
            plates.add(spaced(plate, plates.isEmpty() ? LEAST_ABOVE.add(LEAST_ABOVE) : above(plates.get(plates.size() - 1))));
        }
        return plates;
    }

    private static BigDecimal above(List<Row> plate) {
        return plate.get(plate.size() - 1).above().max(LEAST_ABOVE);
    }

    /** The white that is left, in equal parts between the rows, but no more than this between two of them. */
    private static List<Row> spaced(List<Row> rows, BigDecimal most) {
        BigDecimal taken = rows.stream().map(row -> row.height().add(NUMBER_BELOW)).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal between = rows.size() == 1 ? BigDecimal.ZERO : HEIGHT.subtract(taken)
                .divide(new BigDecimal(rows.size() - 1), 1, RoundingMode.DOWN).min(most);
        List<Row> spaced = new ArrayList<>();
        for (Row row : rows) {
            spaced.add(new Row(row.pairs(), spaced.isEmpty() ? BigDecimal.ZERO : between, row.height(), row.cell(), row.places()));
        }
        return List.copyOf(spaced);
    }

    private static List<Row> rows(List<Pair> pairs) {
        List<Row> rows = new ArrayList<>();
        int from = 0;
        while (from < pairs.size()) {
            int places = MOST_PLACES;
            while (places > 1 && !fit(pairs, from, places)) {
                places--;
            }
            List<Pair> row = pairs.subList(from, Math.min(from + places, pairs.size()));
            BigDecimal height = row.stream().map(pair -> pair.picture().width()).reduce(BigDecimal.ZERO, BigDecimal::max);
            rows.add(new Row(row, BigDecimal.ZERO, height, cell(places), places));
            from += row.size();
        }
        return rows;
    }

    private static boolean fit(List<Pair> pairs, int from, int places) {
        return pairs.subList(from, Math.min(from + places, pairs.size())).stream()
                .allMatch(pair -> width(pair).add(BETWEEN_PAIRS).compareTo(cell(places)) <= 0);
    }

    private static BigDecimal cell(int places) {
        return WIDTH.divide(new BigDecimal(places), 2, RoundingMode.DOWN);
    }

    private static BigDecimal width(Pair pair) {
        boolean both = pair.picture().obverse().isPresent() && pair.picture().reverse().isPresent();
        return both ? pair.picture().width().add(pair.picture().width()).add(GAP) : pair.picture().width();
    }
}
