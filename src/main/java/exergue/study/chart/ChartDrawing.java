package exergue.study.chart;

/** Draws charts. The same drawing goes into the book, into its pages for a browser and into files. */
public final class ChartDrawing {

    /** Width of a chapter’s lines: 141 mm in points. */
    static final double WIDTH = 399;

    private ChartDrawing() { }

    /** The chart as a file of its own. @param title what it shows, in words */
    public static String file(Chart chart, String title) {
        String svg = svg(chart);
        int head = svg.indexOf('\n') + 1;
        return svg.substring(0, head) + "<title>" + SvgPaper.escaped(title) + "</title>\n" + svg.substring(head);
    }

    /** The chart as SVG, {@code viewBox} in points. */
    public static String svg(Chart chart) {
        if (chart instanceof Histogram histogram) {
            return new HistogramDrawing(histogram).svg();
        }
        if (chart instanceof Links links) {
            return new LinksDrawing(links).svg();
        }
        return chart instanceof Rose rose ? RoseDrawing.svg(rose) : new ScatterDrawing((Scatter) chart).svg();
    }
}
