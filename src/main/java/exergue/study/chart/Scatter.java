package exergue.study.chart;

import java.util.List;

/**
 * One figure over another, a mark for each coin; each group with a mark of its own.
 *
 * @param across what runs to the right, with its unit
 * @param up     what runs upwards
 * @param decimalMark of the figures at the axes
 */
public record Scatter(String across, String up, String decimalMark, List<Series> series) implements Chart {

    public Scatter {
        series = List.copyOf(series);
    }

    public record Series(String name, List<Point> points) {
        public Series {
            points = List.copyOf(points);
        }
    }
}
