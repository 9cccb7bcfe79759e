package exergue.study.chart;

import java.util.List;
import java.util.Locale;

/**
 * A sheet on which charts are drawn, in points, as SVG. No opacity, masks or filters, which a PDF for archiving cannot have. Every
 * element says its own colour and stroke, so that a style sheet can change nothing by accident.
 */
final class SvgPaper {

    static final String BLACK = "#000";
    /** Areas: dark enough to be seen in print beside white, light enough for black lines upon it. */
    static final String GREY = "#d4d4d4";
    static final String WHITE = "#fff";
    static final double HAIRLINE = 0.4;
    static final double LINE = 0.9;
    /** Of all letters: that of captions. */
    static final double SIZE = 8;
    /** A letter of the book's face is about so wide, in ems: enough to see whether a line of words is too long. */
    private static final double LETTER = 0.5;
    private static final String FAMILY = "Gentium Book Plus";

    private final double width;
    private final double height;
    private final StringBuilder elements = new StringBuilder();

    SvgPaper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** About how wide words are. */
    static double width(String words) {
        return words.codePointCount(0, words.length()) * LETTER * SIZE;
    }

    void line(Point from, Point to, double stroke) {
        line(from, to, stroke, "");
    }

    void dashed(Point from, Point to) {
        line(from, to, LINE, " stroke-dasharray=\"4 2.5\"");
    }

    private void line(Point from, Point to, double stroke, String more) {
        elements.append("<line x1=\"").append(at(from.x())).append("\" y1=\"").append(at(from.y())).append("\" x2=\"")
                .append(at(to.x())).append("\" y2=\"").append(at(to.y())).append("\" stroke=\"").append(BLACK)
                .append("\" stroke-width=\"").append(at(stroke)).append('"').append(more).append("/>\n");
    }

    void box(Point corner, double wide, double high, String fill) {
        elements.append("<rect x=\"").append(at(corner.x())).append("\" y=\"").append(at(corner.y())).append("\" width=\"")
                .append(at(wide)).append("\" height=\"").append(at(high)).append('"').append(filled(fill)).append("/>\n");
    }

    /** White, without a border: for words upon lines. */
    void blank(Point corner, double wide, double high) {
        elements.append("<rect x=\"").append(at(corner.x())).append("\" y=\"").append(at(corner.y())).append("\" width=\"")
                .append(at(wide)).append("\" height=\"").append(at(high)).append("\" fill=\"").append(WHITE).append("\"/>\n");
    }

    void circle(Point middle, double radius, String fill) {
        elements.append("<circle cx=\"").append(at(middle.x())).append("\" cy=\"").append(at(middle.y())).append("\" r=\"")
                .append(at(radius)).append('"').append(filled(fill)).append("/>\n");
    }

    /** @param steps of a path, as SVG writes them */
    void path(String steps, double stroke, String fill) {
        elements.append("<path d=\"").append(steps).append("\" fill=\"").append(fill).append("\" stroke=\"").append(BLACK)
                .append("\" stroke-width=\"").append(at(stroke)).append("\"/>\n");
    }

    void curve(List<Point> points) {
        StringBuilder steps = new StringBuilder();
        points.forEach(point -> steps.append(steps.isEmpty() ? "M" : " L").append(at(point.x())).append(' ').append(at(point.y())));
        path(steps.toString(), LINE, "none");
    }

    /** @param anchor start, middle or end */
    void text(Point foot, String anchor, String words) {
        text(foot, anchor, words, "");
    }

    /** Words that run upwards. */
    void upright(Point foot, String words) {
        text(foot, "middle", words, " transform=\"rotate(-90 " + at(foot.x()) + " " + at(foot.y()) + ")\"");
    }

    void italic(Point foot, String anchor, String words) {
        text(foot, anchor, words, " font-style=\"italic\"");
    }

    private void text(Point foot, String anchor, String words, String more) {
        elements.append("<text x=\"").append(at(foot.x())).append("\" y=\"").append(at(foot.y())).append("\" text-anchor=\"")
                .append(anchor).append("\" fill=\"").append(BLACK).append('"').append(more).append('>').append(escaped(words))
                .append("</text>\n");
    }

    private static String filled(String fill) {
        return " fill=\"" + fill + "\" stroke=\"" + BLACK + "\" stroke-width=\"" + at(HAIRLINE) + "\"";
    }

    String svg() {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + at(width) + "pt\" height=\"" + at(height) + "pt\" viewBox=\"0 0 "
                + at(width) + " " + at(height) + "\" font-family=\"'" + FAMILY + "', serif\" font-size=\"" + at(SIZE) + "\" text-rendering=\"geometricPrecision\">\n"
                + elements + "</svg>\n";
    }

    /** A figure as SVG writes it, to a hundredth of a point. */
    static String at(double value) {
        String figure = String.format(Locale.ROOT, "%.2f", value);
        return figure.equals("-0.00") ? "0" : figure.replaceFirst("\\.?0+$", "");
    }

    static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
