package exergue.study.chart;

import exergue.study.Figure;
import exergue.study.Scale;
import java.util.List;

/** Draws a histogram: bars, the smooth curve over them, a stroke for each figure below. */
final class HistogramDrawing {

    private static final double LEFT = 30;
    private static final double RIGHT = 14;
    private static final double HEAD = 12;
    private static final double FOOT = 26;
    private static final double TALL = 96;
    private static final double LOW = 62;
    private static final double RUG = 4;
    private static final double BETWEEN = 14;
    /** More panels than this are low ones. */
    private static final int FEW = 2;
    private static final int COUNT_TICKS = 3;

    private final Histogram chart;
    private final double panel;
    private final Scale across;
    private final SvgPaper paper;

    HistogramDrawing(Histogram chart) {
        this.chart = chart;
        this.panel = chart.panels().size() > FEW ? LOW : TALL;
        this.across = Scale.over(chart.from(), chart.to(), LEFT, ChartDrawing.WIDTH - RIGHT);
        this.paper = new SvgPaper(ChartDrawing.WIDTH, HEAD + chart.panels().size() * (panel + BETWEEN) - BETWEEN + RUG + FOOT);
    }

    String svg() {
        double foot = HEAD;
        for (Histogram.Panel one : chart.panels()) {
            foot += panel;
            draw(one, foot);
            foot += BETWEEN;
        }
        axis(foot - BETWEEN + RUG + 1);
        chart.mark().ifPresent(mark -> {
            double x = across.at(mark.at());
            paper.dashed(new Point(x, HEAD - 2), new Point(x, paperFoot()));
            boolean late = x + SvgPaper.width(mark.name()) > ChartDrawing.WIDTH;
            paper.italic(new Point(x, HEAD - 4), late ? "end" : x - SvgPaper.width(mark.name()) / 2 < LEFT ? "start" : "middle", mark.name());
        });
        return paper.svg();
    }

    private double paperFoot() {
        return HEAD + chart.panels().size() * (panel + BETWEEN) - BETWEEN;
    }

    private void draw(Histogram.Panel one, double foot) {
        double most = Math.max(1, one.counts().stream().mapToInt(Integer::intValue).max().orElse(1));
        double highest = Math.max(most, one.density().stream().mapToDouble(Point::y).max().orElse(0));
        double unit = (panel - SvgPaper.SIZE - 4) / highest;
        for (int i = 0; i < one.counts().size(); i++) {
            double x = across.at(chart.from() + i * chart.step());
            double high = one.counts().get(i) * unit;
            if (high > 0) {
                paper.box(new Point(x, foot - high), across.at(chart.from() + (i + 1) * chart.step()) - x, high, SvgPaper.GREY);
            }
        }
        List<Point> curve = one.density().stream().filter(point -> point.x() >= across.least() && point.x() <= across.greatest())
                .map(point -> new Point(across.at(point.x()), foot - point.y() * unit)).toList();
        if (!curve.isEmpty()) {
            paper.curve(curve);
        }
        one.rug().stream().distinct().forEach(figure -> paper.line(new Point(across.at(figure), foot + 1),
                new Point(across.at(figure), foot + 1 + RUG), SvgPaper.HAIRLINE));
        paper.line(new Point(LEFT, foot), new Point(ChartDrawing.WIDTH - RIGHT, foot), SvgPaper.HAIRLINE);
        counts(most, unit, foot);
        paper.text(new Point(LEFT + 6, foot - panel + SvgPaper.SIZE), "start", one.name());
    }

    /** Whole numbers at the left. */
    private void counts(double most, double unit, double foot) {
        int step = Math.max(1, Scale.step(most / COUNT_TICKS).intValue());
        paper.line(new Point(LEFT, foot), new Point(LEFT, foot - most * unit), SvgPaper.HAIRLINE);
        for (int count = 0; count <= most; count += step) {
            double y = foot - count * unit;
            paper.line(new Point(LEFT - 3, y), new Point(LEFT, y), SvgPaper.HAIRLINE);
            paper.text(new Point(LEFT - 5, y + 2.7), "end", String.valueOf(count));
        }
    }

    private void axis(double top) {
        for (double tick : across.ticks()) {
            double x = across.at(tick);
            paper.line(new Point(x, top), new Point(x, top + 3), SvgPaper.HAIRLINE);
            paper.text(new Point(x, top + 11), "middle",
                    Figure.words(tick, across.decimals()).replace(".", chart.decimalMark()));
        }
        paper.line(new Point(LEFT, top), new Point(ChartDrawing.WIDTH - RIGHT, top), SvgPaper.HAIRLINE);
        paper.text(new Point((LEFT + ChartDrawing.WIDTH - RIGHT) / 2, top + 21), "middle", chart.axis());
    }
}
