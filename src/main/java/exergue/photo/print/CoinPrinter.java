package exergue.photo.print;

import exergue.model.PictureStyle;
import exergue.photo.DiameterLine;
import exergue.photo.Outline;
import exergue.photo.print.Seen.Shown;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * Decides how the sides of a coin are printed: which part of a photograph, and how large.
 *
 * <p>The coin's recorded diameter, in the direction its convention says, is exact on paper. A diameter in a fixed direction is
 * taken on the obverse (common practice, no source); the reverse has the same edge seen from behind, so it is printed with the
 * same area. The greatest and the mean diameter are the same from both sides, and each side is scaled by its own.
 */
final class CoinPrinter {

    private final PictureStyle style;
    private final PrintedSize.Size size;

    CoinPrinter(PictureStyle style, PrintedSize.Size size) {
        this.style = style;
        this.size = size;
    }

    /**
     * One side on its photograph.
     *
     * @param outlined which of the outlines it is; empty if there is none
     */
    record Exposure(Negative negative, Shown shown, Optional<Integer> outlined) {

        Optional<Outline> outline() {
            return outlined.map(side -> shown.sides().get(side).outline());
        }
    }

    CoinPrint.Side obverse(Exposure obverse) {
        return side(obverse, scale(obverse));
    }

    /** @param obverse of the same coin, if it is shown */
    CoinPrint.Side reverse(Exposure reverse, Optional<Exposure> obverse) {
        return side(reverse, reverseScale(reverse, obverse));
    }

    /** Millimetres on paper to a pixel of the photograph. */
    private double scale(Exposure side) {
        Optional<BigDecimal> diameter = size.diameter().map(size.scale()::times);
        if (side.outline().isPresent() && (diameter.isPresent() || size.file().isEmpty())) {
            return diameter.orElse(PrintedSize.MODEST).doubleValue()
                    / (diameter.isPresent() ? size.taken() : DiameterLine.NOT_SAID).on(side.outline().get());
        }
        return size.ofWholePicture().doubleValue() / side.shown().width();
    }

    private double reverseScale(Exposure reverse, Optional<Exposure> obverse) {
        if (obverse.isPresent() && obverse.get().negative() == reverse.negative()) {
            return scale(obverse.get());
        }
        Optional<Outline> front = obverse.flatMap(Exposure::outline);
        if (size.diameter().isPresent() && size.taken().isFixed() && front.isPresent() && reverse.outline().isPresent()) {
            return scale(obverse.orElseThrow()) * Math.sqrt(front.get().edge().area() / reverse.outline().get().edge().area());
        }
        return scale(reverse);
    }

    private CoinPrint.Side side(Exposure side, double scale) {
        boolean cutOut = style.ground() == PictureStyle.Ground.CUT_OUT && side.outline().isPresent();
        boolean shared = side.outlined().isPresent() && side.shown().sides().size() > 1;
        if (!cutOut && !shared && side.shown().asItIs() && (side.shown().grey() || !grey())) {
            return new CoinPrint.Side(side.negative().path(), Optional.empty(), Framing.millimetres(side.shown().width(), scale),
                    Framing.millimetres(side.shown().height(), scale), "", tone(side));
        }
        Cut.Frame frame = cutOut ? Framing.aroundCoin(side.outline().get(), scale)
                : shared ? Framing.withGround(side.shown(), side.outlined().get(), scale) : Framing.whole(side.shown(), scale);
        Cut cut = new Cut(side.negative().path(), side.negative().digest(), cutOut ? side.outlined().get() : Cut.GROUND, frame,
                grey() || side.shown().grey(), Framing.ppi(frame, scale));
        return new CoinPrint.Side(side.negative().path(), Optional.of(cut),
                Framing.millimetres(frame.width() * frame.step(), scale), Framing.millimetres(frame.height() * frame.step(), scale),
                cutOut ? ClipShape.of(side.outline().get(), frame) : "", tone(side));
    }

    private boolean grey() {
        return style.colours() == PictureStyle.Colours.GREY;
    }

    private static Optional<Tone> tone(Exposure side) {
        return side.outlined().map(outlined -> side.shown().sides().get(outlined).tone());
    }
}
