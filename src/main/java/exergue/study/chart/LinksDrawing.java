package exergue.study.chart;

import java.util.List;
import java.util.stream.Stream;

/** Draws links: two rows of dots with names, and lines between them. */
final class LinksDrawing {

    private static final double MARGIN = 4;
    private static final double WIDEST_SLOT = 34;
    /** From the foot of the upper names to the head of the lower. */
    private static final double GAP = 58;
    private static final double NAME = 11;
    private static final double HEAD = 12;
    private static final double BETWEEN = 14;
    private static final double FOOT = 8;
    private static final double DOT = 1.9;
    private static final double HEAVIER = 0.7;
    private static final int HEAVIEST = 4;

    private final Links chart;
    private final double slot;
    private final boolean upright;
    private final double nameHigh;
    private final SvgPaper paper;

    LinksDrawing(Links chart) {
        this.chart = chart;
        this.slot = Math.min(WIDEST_SLOT, (ChartDrawing.WIDTH - 2 * MARGIN) / chart.slots());
        double widest = chart.bands().stream().flatMap(band -> band.groups().stream())
                .flatMap(group -> Stream.concat(group.upper().stream(), group.lower().stream()))
                .mapToDouble(node -> SvgPaper.width(name(node))).max().orElse(0);
        this.upright = widest > slot;
        this.nameHigh = upright ? widest + 2 : NAME;
        this.paper = new SvgPaper(ChartDrawing.WIDTH, chart.bands().size() * (bandHigh() + BETWEEN) - BETWEEN + FOOT);
    }

    private double bandHigh() {
        return HEAD + 2 * nameHigh + GAP;
    }

    String svg() {
        double top = 0;
        for (Links.Band band : chart.bands()) {
            for (Links.Group group : band.groups()) {
                draw(group, top);
            }
            top += bandHigh() + BETWEEN;
        }
        return paper.svg();
    }

    private void draw(Links.Group group, double top) {
        double upper = top + HEAD + nameHigh;
        double lower = upper + GAP;
        paper.italic(new Point(x(group, new Links.Node("", 0, false)), top + SvgPaper.SIZE), "start", group.name());
        for (Links.Line line : group.lines()) {
            Point from = new Point(x(group, group.upper().get(line.upper())), upper);
            Point to = new Point(x(group, group.lower().get(line.lower())), lower);
            paper.line(from, to, SvgPaper.HAIRLINE + HEAVIER * (Math.min(line.coins(), HEAVIEST) - 1));
        }
        group.lines().stream().filter(line -> line.coins() > 1).forEach(line -> count(group, line, upper, lower));
        names(group, group.upper(), upper, true);
        names(group, group.lower(), lower, false);
    }

    /** Nearer to the lower end, where lines lie farther apart. */
    private void count(Links.Group group, Links.Line line, double upper, double lower) {
        double from = x(group, group.upper().get(line.upper()));
        double to = x(group, group.lower().get(line.lower()));
        Point middle = new Point(from + (to - from) * 0.66, upper + (lower - upper) * 0.66);
        String words = String.valueOf(line.coins());
        double half = SvgPaper.width(words) / 2 + 1;
        paper.blank(new Point(middle.x() - half, middle.y() - SvgPaper.SIZE / 2), 2 * half, SvgPaper.SIZE);
        paper.text(new Point(middle.x(), middle.y() + 2.7), "middle", words);
    }

    private void names(Links.Group group, List<Links.Node> nodes, double y, boolean above) {
        for (Links.Node node : nodes) {
            double x = x(group, node);
            paper.circle(new Point(x, y), DOT, above ? SvgPaper.BLACK : SvgPaper.WHITE);
            if (upright) {
                double middle = SvgPaper.width(name(node)) / 2 + DOT + 2;
                paper.upright(new Point(x + 2.7, above ? y - middle : y + middle), name(node));
            } else {
                paper.text(new Point(x, above ? y - DOT - 3 : y + DOT + 9), "middle", name(node));
            }
        }
    }

    private double x(Links.Group group, Links.Node node) {
        return MARGIN + (group.from() + node.at()) * slot;
    }

    private static String name(Links.Node node) {
        return node.again() ? "(" + node.name() + ")" : node.name();
    }
}
