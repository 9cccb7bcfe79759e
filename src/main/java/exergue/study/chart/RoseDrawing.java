package exergue.study.chart;

import java.util.List;

/** Draws dials with a sector for each hour; the area of a sector is as its count. */
final class RoseDrawing {

    private static final int HOURS = 12;
    private static final double NUMERALS = 9;
    /** Of the lines below a dial. */
    private static final double NAMES = 22;
    private static final double WIDEST = 48;
    private static final int FEW = 3;
    private static final int MANY = 4;

    private final SvgPaper paper;
    private final double radius;

    private RoseDrawing(SvgPaper paper, double radius) {
        this.paper = paper;
        this.radius = radius;
    }

    static String svg(Rose rose) {
        List<Rose.Dial> dials = rose.dials();
        int inRow = dials.size() <= FEW ? FEW : MANY;
        double cell = ChartDrawing.WIDTH / inRow;
        double radius = Math.min(WIDEST, cell / 2 - 2 * NUMERALS);
        double tall = 2 * (radius + 2 * NUMERALS) + NAMES;
        int rows = (dials.size() + inRow - 1) / inRow;
        SvgPaper paper = new SvgPaper(Math.min(inRow, dials.size()) * cell, rows * tall);
        RoseDrawing drawing = new RoseDrawing(paper, radius);
        for (int i = 0; i < dials.size(); i++) {
            drawing.dial(dials.get(i), new Point((i % inRow + 0.5) * cell, i / inRow * tall + radius + 2 * NUMERALS - 2));
        }
        return paper.svg();
    }

    private void dial(Rose.Dial dial, Point middle) {
        paper.circle(middle, radius, "none");
        double most = Math.max(1, dial.counts().stream().mapToDouble(Double::doubleValue).max().orElse(1));
        for (int hour = 0; hour < HOURS; hour++) {
            if (dial.counts().get(hour) > 0) {
                sector(middle, hour, radius * Math.sqrt(dial.counts().get(hour) / most));
            }
            Point tick = onTheDial(middle, hour, radius);
            paper.line(tick, onTheDial(middle, hour, radius + 2.5), SvgPaper.HAIRLINE);
            Point numeral = onTheDial(middle, hour, radius + NUMERALS);
            paper.text(new Point(numeral.x(), numeral.y() + 2.7), "middle", String.valueOf(hour == 0 ? HOURS : hour));
        }
        dial.mean().ifPresent(mean -> paper.line(dial.both() ? onTheDial(middle, mean + HOURS / 2.0, radius + 2.5) : middle,
                onTheDial(middle, mean, radius + 2.5), 1.4));
        double foot = middle.y() + radius + 2 * NUMERALS + 8;
        paper.text(new Point(middle.x(), foot), "middle", dial.name());
        paper.text(new Point(middle.x(), foot + 10), "middle", dial.note());
    }

    private void sector(Point middle, int hour, double reach) {
        Point from = onTheDial(middle, hour - 0.5, reach);
        Point to = onTheDial(middle, hour + 0.5, reach);
        String r = SvgPaper.at(reach);
        paper.path("M" + SvgPaper.at(middle.x()) + " " + SvgPaper.at(middle.y()) + " L" + SvgPaper.at(from.x()) + " "
                + SvgPaper.at(from.y()) + " A" + r + " " + r + " 0 0 1 " + SvgPaper.at(to.x()) + " " + SvgPaper.at(to.y()) + " Z",
                SvgPaper.HAIRLINE, SvgPaper.GREY);
    }

    private static Point onTheDial(Point middle, double hour, double reach) {
        double angle = 2 * Math.PI * hour / HOURS;
        return new Point(middle.x() + reach * StrictMath.sin(angle), middle.y() - reach * StrictMath.cos(angle));
    }
}
