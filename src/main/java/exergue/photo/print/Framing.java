package exergue.photo.print;

import exergue.photo.Outline;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** How large a coin comes out on paper, and which pixels of its photograph that takes. */
final class Framing {

    /** More pixels an inch than these no press shows; a photograph with many more is brought down to them. */
    private static final double FINEST = 450;
    private static final double ALLOWED = 600;
    private static final double MM_PER_INCH = 25.4;
    /** White around the outline, in pixels of the picture, for its soft edge. */
    private static final int MARGIN = 3;
    /** Ground around a coin that shares its photograph with its other side, as part of its diameter. */
    private static final double GROUND = 0.05;
    private static final int DECIMALS = 5;

    private Framing() { }

    /** @param scale mm on paper to a pixel of the photograph */
    static Cut.Frame aroundCoin(Outline outline, double scale) {
        double step = step(scale);
        int width = (int) Math.ceil(outline.horizontal() / step) + 2 * MARGIN;
        int height = (int) Math.ceil(outline.vertical() / step) + 2 * MARGIN;
        double left = (outline.edge().left() + outline.edge().right() - width * step) / 2;
        double top = (outline.edge().top() + outline.edge().bottom() - height * step) / 2;
        return step == 1 ? new Cut.Frame(Math.rint(left), Math.rint(top), 1, width, height)
                : new Cut.Frame(left, top, step, width, height);
    }

    /** The coin with a little of its ground, no more than half of the way to its other side. */
    static Cut.Frame withGround(Seen.Shown shown, int side, double scale) {
        Outline outline = shown.sides().get(side).outline();
        double margin = GROUND * outline.greatest().length();
        double left = side == 0 ? 0 : between(shown);
        double right = side == 0 ? between(shown) : shown.width();
        double step = step(scale);
        double from = Math.rint(Math.max(left, outline.edge().left() - margin));
        double top = Math.rint(Math.max(0, outline.edge().top() - margin));
        return new Cut.Frame(from, top, step, (int) ((Math.min(right, outline.edge().right() + margin) - from) / step),
                (int) ((Math.min(shown.height(), outline.edge().bottom() + margin) - top) / step));
    }

    private static double between(Seen.Shown shown) {
        return Math.floor((shown.sides().get(0).outline().edge().right() + shown.sides().get(1).outline().edge().left()) / 2);
    }

    static Cut.Frame whole(Seen.Shown shown, double scale) {
        double step = step(scale);
        return new Cut.Frame(0, 0, step, (int) Math.round(shown.width() / step), (int) Math.round(shown.height() / step));
    }

    private static double step(double scale) {
        double ppi = MM_PER_INCH / scale;
        return ppi > ALLOWED ? ppi / FINEST : 1;
    }

    static int ppi(Cut.Frame frame, double scale) {
        return (int) Math.round(MM_PER_INCH / (scale * frame.step()));
    }

    /** To a hundred-thousandth of a millimetre. */
    static BigDecimal millimetres(double pixels, double scale) {
        return new BigDecimal(pixels * scale).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    }
}
