package exergue.edition;

import java.math.BigDecimal;
import java.util.List;

/**
 * Where pictures can stand on a plate: the usual page of the templates without the plate's head and what stands at its
 * foot. In millimetres.
 *
 * @param height of every plate but the last
 * @param last   height of the last, below which the legend stands
 */
record PlateSpace(BigDecimal width, BigDecimal height, BigDecimal last) {

    /** The catalogue number below a pair, with the white above it. */
    static final BigDecimal NUMBER_BELOW = new BigDecimal("5");

    static final BigDecimal WIDTH = new BigDecimal("158");
    /** The page's 226 mm without the head and its caption. */
    private static final BigDecimal HEIGHT = new BigDecimal("212");
    private static final BigDecimal BAR = new BigDecimal("9");
    private static final BigDecimal ABOVE_LEGEND = new BigDecimal("4.6");
    private static final BigDecimal LEGEND_LINE = new BigDecimal("3.9");
    /** A legend that leaves less than this goes to the page after. */
    private static final BigDecimal LEAST = new BigDecimal("140");
    /** Letters of a line of the legend, a few less than there mostly are. */
    private static final int LINE = 85;

    /** @param last whether it is that of the last plate */
    BigDecimal height(boolean last) {
        return last ? this.last : height;
    }

    /** What these rows leave. */
    BigDecimal below(List<Plate.Row> rows, boolean last) {
        return height(last).subtract(rows.stream().map(row -> row.above().add(row.height()).add(NUMBER_BELOW))
                .reduce(BigDecimal.ZERO, BigDecimal::add)).max(BigDecimal.ZERO);
    }

    /** @param bar whether a scale is drawn at the foot */
    static PlateSpace of(boolean bar, List<String> legend) {
        BigDecimal height = bar ? HEIGHT.subtract(BAR) : HEIGHT;
        int letters = String.join(" ", legend).length();
        BigDecimal lines = new BigDecimal((letters + LINE - 1) / LINE);
        BigDecimal left = letters == 0 ? height : height.subtract(ABOVE_LEGEND).subtract(LEGEND_LINE.multiply(lines));
        return new PlateSpace(WIDTH, height, left.compareTo(LEAST) < 0 ? height : left);
    }
}
