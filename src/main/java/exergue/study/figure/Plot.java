package exergue.study.figure;

import exergue.study.chart.Chart;
import java.util.List;

/**
 * A chart.
 *
 * @param alternative what it shows, in words, for readers who cannot see it
 * @param table       the figures that it draws
 */
public record Plot(Chart chart, String alternative, FigureTable table, List<String> notes) implements Exhibit {

    public Plot {
        notes = List.copyOf(notes);
    }
}
