package exergue.study.chart;

import java.util.List;

/** Draws dials with a sector for each hour; the area of a sector is as its count. */
final class RoseDrawing {

    private static final int HOURS = 12;
    private static final double RADIUS = 44;
    private static final double NUMERALS = 9;
    private static final double TALL = 2 * (RADIUS + 2 * NUMERALS) + 22;
    private static final int IN_A_ROW = 4;
    private static final double CELL = ChartDrawing.WIDTH / IN_A_ROW;

    private final SvgPaper paper;

    private RoseDrawing(SvgPaper paper) {
        this.paper = paper;
    }

    static String svg(Rose rose) {
        List<Rose.Dial> dials = rose.dials();
        int inRow = Math.min(IN_A_ROW, dials.size());
        int rows = (dials.size() + IN_A_ROW - 1) / IN_A_ROW;
        SvgPaper paper = new SvgPaper(inRow * CELL, rows * TALL);
        RoseDrawing drawing = new RoseDrawing(paper);
        for (int i = 0; i < dials.size(); i++) {
            drawing.dial(dials.get(i), new Point((i % IN_A_ROW + 0.5) * CELL, i / IN_A_ROW * TALL + RADIUS + 2 * NUMERALS - 2));
        }
        return paper.svg();
    }

    private void dial(Rose.Dial dial, Point middle) {
        paper.circle(middle, RADIUS, "none");
        double most = Math.max(1, dial.counts().stream().mapToDouble(Double::doubleValue).max().orElse(1));
        for (int hour = 0; hour < HOURS; hour++) {
            if (dial.counts().get(hour) > 0) {
                sector(middle, hour, RADIUS * Math.sqrt(dial.counts().get(hour) / most));
            }
            Point tick = onTheDial(middle, hour, RADIUS);
            paper.line(tick, onTheDial(middle, hour, RADIUS + 2.5), SvgPaper.HAIRLINE);
            Point numeral = onTheDial(middle, hour, RADIUS + NUMERALS);
            paper.text(new Point(numeral.x(), numeral.y() + 2.7), "middle", String.valueOf(hour == 0 ? HOURS : hour));
        }
        dial.mean().ifPresent(mean -> paper.line(dial.both() ? onTheDial(middle, mean + HOURS / 2.0, RADIUS + 2.5) : middle,
                onTheDial(middle, mean, RADIUS + 2.5), 1.4));
        double foot = middle.y() + RADIUS + 2 * NUMERALS + 8;
        paper.text(new Point(middle.x(), foot), "middle", dial.name());
        paper.text(new Point(middle.x(), foot + 10), "middle", dial.note());
    }

    private void sector(Point middle, int hour, double radius) {
        Point from = onTheDial(middle, hour - 0.5, radius);
        Point to = onTheDial(middle, hour + 0.5, radius);
        String r = SvgPaper.at(radius);
        paper.path("M" + SvgPaper.at(middle.x()) + " " + SvgPaper.at(middle.y()) + " L" + SvgPaper.at(from.x()) + " "
                + SvgPaper.at(from.y()) + " A" + r + " " + r + " 0 0 1 " + SvgPaper.at(to.x()) + " " + SvgPaper.at(to.y()) + " Z",
                SvgPaper.HAIRLINE, SvgPaper.GREY);
    }

    private static Point onTheDial(Point middle, double hour, double radius) {
        double angle = 2 * Math.PI * hour / HOURS;
        return new Point(middle.x() + radius * StrictMath.sin(angle), middle.y() - radius * StrictMath.cos(angle));
    }
}
