package exergue.study;

import java.util.Arrays;
import java.util.Locale;

/**
 * Draws the differences between two hands over the means of their figures, after Bland and Altman 1986, with a line for
 * the mean difference and one for each limit of agreement. Black on white, no legend: the lines bear their names.
 */
public final class AgreementPlot {

    private static final int WIDTH = 480;
    private static final int HEIGHT = 320;
    private static final int LEFT = 64;
    private static final int RIGHT = 96;
    private static final int TOP = 16;
    private static final int BOTTOM = 48;
    private static final int TICK = 5;

    private final Differences differences;
    private final String unit;
    private final int decimals;
    private final Scale across;
    private final Scale up;
    private final StringBuilder svg = new StringBuilder();

    private AgreementPlot(Differences differences, String unit) {
        this.differences = differences;
        this.unit = unit;
        this.decimals = unit.equals("g") ? 2 : 1;
        double[] means = differences.points().stream().mapToDouble(Differences.Point::mean).toArray();
        this.across = Scale.over(least(means), greatest(means), LEFT, WIDTH - RIGHT);
        double[] all = differences.points().stream().mapToDouble(Differences.Point::difference).toArray();
        this.up = Scale.over(Math.min(least(all), differences.lower()), Math.max(greatest(all), differences.upper()),
                HEIGHT - BOTTOM, TOP);
    }

    /** The plot as an SVG file in a font of the name of the book's. @param unit "g" or "mm" */
    public static String svg(TwoHands hands, Differences differences, String unit) {
        AgreementPlot plot = new AgreementPlot(differences, unit);
        plot.draw("Difference " + hands.first().id() + " − " + hands.second().id() + ", " + unit,
                "Mean of the two, " + unit);
        return plot.svg.toString();
    }

    private void draw(String upTitle, String acrossTitle) {
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + WIDTH + "\" height=\"" + HEIGHT
                + "\" viewBox=\"0 0 " + WIDTH + " " + HEIGHT + "\" font-family=\"Gentium Book Plus, serif\" "
                + "font-size=\"12\" fill=\"black\" stroke=\"none\">\n");
        svg.append("<title>").append(escaped(upTitle)).append("</title>\n");
        svg.append("<rect width=\"" + WIDTH + "\" height=\"" + HEIGHT + "\" fill=\"white\"/>\n");
        axes();
        level(differences.bias(), "mean " + Figure.words(differences.bias(), decimals), "");
        level(differences.upper(), Figure.words(differences.upper(), decimals), " stroke-dasharray=\"4 3\"");
        level(differences.lower(), Figure.words(differences.lower(), decimals), " stroke-dasharray=\"4 3\"");
        for (Differences.Point point : differences.points()) {
            svg.append("<circle cx=\"").append(at(across.at(point.mean()))).append("\" cy=\"")
                    .append(at(up.at(point.difference()))).append("\" r=\"2.5\"><title>").append(escaped(point.coin()))
                    .append("</title></circle>\n");
        }
        text((LEFT + WIDTH - RIGHT) / 2.0, HEIGHT - 8, "middle", acrossTitle, "");
        double middle = (TOP + HEIGHT - BOTTOM) / 2.0;
        text(14, middle, "middle", upTitle, " transform=\"rotate(-90 14 " + at(middle) + ")\"");
        svg.append("</svg>\n");
    }

    private void axes() {
        double floor = HEIGHT - BOTTOM;
        line(LEFT, floor, WIDTH - RIGHT, floor, "");
        line(LEFT, TOP, LEFT, floor, "");
        for (double tick : across.ticks()) {
            line(across.at(tick), floor, across.at(tick), floor + TICK, "");
            text(across.at(tick), floor + 18, "middle", Figure.words(tick, across.decimals()), "");
        }
        for (double tick : up.ticks()) {
            line(LEFT - TICK, up.at(tick), LEFT, up.at(tick), "");
            text(LEFT - 8, up.at(tick) + 4, "end", Figure.words(tick, up.decimals()), "");
        }
    }

    private void level(double value, String name, String dash) {
        line(LEFT, up.at(value), WIDTH - RIGHT, up.at(value), dash);
        text(WIDTH - RIGHT + 6, up.at(value) + 4, "start", name + " " + unit, "");
    }

    private void line(double x1, double y1, double x2, double y2, String more) {
        svg.append("<line x1=\"").append(at(x1)).append("\" y1=\"").append(at(y1)).append("\" x2=\"").append(at(x2))
                .append("\" y2=\"").append(at(y2)).append("\" stroke=\"black\" stroke-width=\"0.75\"").append(more)
                .append("/>\n");
    }

    private void text(double x, double y, String anchor, String words, String more) {
        svg.append("<text x=\"").append(at(x)).append("\" y=\"").append(at(y)).append("\" text-anchor=\"").append(anchor)
                .append('"').append(more).append('>').append(escaped(words)).append("</text>\n");
    }

    private static String at(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }

    private static double least(double[] values) {
        return Arrays.stream(values).min().orElseThrow();
    }

    private static double greatest(double[] values) {
        return Arrays.stream(values).max().orElseThrow();
    }
}
