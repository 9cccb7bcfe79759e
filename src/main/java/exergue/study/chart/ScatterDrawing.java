package exergue.study.chart;

import exergue.study.Figure;
import exergue.study.Scale;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Draws a scatter: a mark for each coin, groups told apart by the form of the mark. */
final class ScatterDrawing {

    private static final double LEFT = 44;
    private static final double RIGHT = 14;
    private static final double FOOT = 30;
    private static final double TALL = 180;
    private static final double KEY_LINE = 12;
    private static final double MARK = 2;

    private final Scatter chart;
    private final List<List<Integer>> keyLines;
    private final double head;
    private final Scale across;
    private final Scale up;
    private final SvgPaper paper;

    ScatterDrawing(Scatter chart) {
        this.chart = chart;
        this.keyLines = keyLines(chart.series());
        this.head = keyLines.size() * KEY_LINE + 6;
        this.across = scale(Point::x, LEFT, ChartDrawing.WIDTH - RIGHT);
        this.up = scale(Point::y, head + TALL, head);
        this.paper = new SvgPaper(ChartDrawing.WIDTH, head + TALL + FOOT);
    }

    private Scale scale(ToDoubleFunction<Point> figure, double from, double to) {
        double[] all = chart.series().stream().flatMap(series -> series.points().stream()).mapToDouble(figure).sorted().toArray();
        return Scale.over(all[0], all[all.length - 1], from, to);
    }

    /** Which groups' names stand on each line over the chart. */
    private static List<List<Integer>> keyLines(List<Scatter.Series> series) {
        List<List<Integer>> lines = new ArrayList<>();
        double x = ChartDrawing.WIDTH;
        for (int i = 0; i < series.size(); i++) {
            double wide = keyWidth(series.get(i));
            if (x + wide > ChartDrawing.WIDTH) {
                lines.add(new ArrayList<>());
                x = LEFT;
            }
            lines.get(lines.size() - 1).add(i);
            x += wide;
        }
        return lines;
    }

    private static double keyWidth(Scatter.Series series) {
        return SvgPaper.width(series.name()) + 24;
    }

    String svg() {
        key();
        axes();
        for (int i = 0; i < chart.series().size(); i++) {
            int form = i;
            chart.series().get(i).points().forEach(point -> mark(form, new Point(across.at(point.x()), up.at(point.y()))));
        }
        return paper.svg();
    }

    private void key() {
        double y = KEY_LINE - 4;
        for (List<Integer> line : keyLines) {
            double x = LEFT;
            for (int form : line) {
                Scatter.Series series = chart.series().get(form);
                mark(form, new Point(x + 3, y - 2.7));
                paper.text(new Point(x + 9, y), "start", series.name());
                x += keyWidth(series);
            }
            y += KEY_LINE;
        }
    }

    private void axes() {
        double foot = head + TALL;
        paper.line(new Point(LEFT, foot), new Point(ChartDrawing.WIDTH - RIGHT, foot), SvgPaper.HAIRLINE);
        paper.line(new Point(LEFT, head), new Point(LEFT, foot), SvgPaper.HAIRLINE);
        for (double tick : across.ticks()) {
            paper.line(new Point(across.at(tick), foot), new Point(across.at(tick), foot + 3), SvgPaper.HAIRLINE);
            paper.text(new Point(across.at(tick), foot + 11), "middle", words(tick, across));
        }
        for (double tick : up.ticks()) {
            paper.line(new Point(LEFT - 3, up.at(tick)), new Point(LEFT, up.at(tick)), SvgPaper.HAIRLINE);
            paper.text(new Point(LEFT - 5, up.at(tick) + 2.7), "end", words(tick, up));
        }
        paper.text(new Point((LEFT + ChartDrawing.WIDTH - RIGHT) / 2, foot + 22), "middle", chart.across());
        paper.upright(new Point(9, head + TALL / 2), chart.up());
    }

    private String words(double tick, Scale scale) {
        return Figure.words(tick, scale.decimals()).replace(".", chart.decimalMark());
    }

    /** Six forms that stay apart in black and white; a seventh group begins again. */
    private void mark(int form, Point at) {
        String x = SvgPaper.at(at.x());
        String y = SvgPaper.at(at.y());
        switch (form % 6) {
            case 0 -> paper.circle(at, MARK, SvgPaper.BLACK);
            case 1 -> paper.circle(at, MARK, SvgPaper.WHITE);
            case 2 -> paper.path("M" + x + " " + y + " m-2.2 -2.2 l4.4 4.4 m0 -4.4 l-4.4 4.4", SvgPaper.LINE, "none");
            case 3 -> paper.path("M" + x + " " + y + " m0 -2.8 l2.5 4.6 h-5 Z", SvgPaper.HAIRLINE, SvgPaper.BLACK);
            case 4 -> paper.box(new Point(at.x() - MARK, at.y() - MARK), 2 * MARK, 2 * MARK, SvgPaper.WHITE);
            default -> paper.path("M" + x + " " + y + " m-2.6 0 h5.2 m-2.6 -2.6 v5.2", SvgPaper.LINE, "none");
        }
    }
}
