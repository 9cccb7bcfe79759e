package exergue.demo;

import java.awt.geom.AffineTransform;
import java.util.function.ToDoubleFunction;

/**
 * One coin, drawn on both sides from one flan. The reverse's edge is the obverse's turned over about the vertical and
 * set upright again by the axis, as in the hand.
 *
 * @param pixelsPerMm of the finished pictures
 * @param margin      in mm around the flan
 */
record DrawnCoin(Flan flan, double axis, Metal metal, double pixelsPerMm, double margin, long seed) {

    private static final int FINER = 2;

    Truth truth() {
        return new Truth(flan.centred(), flan.turnedOver(axis).centred(), axis, 1 / pixelsPerMm);
    }

    /** What happens to a side between the blow and the lamp, in millimetres from the middle of the picture. */
    interface Later {
        void work(Graver surface, double pixelsPerMm);
    }

    /** @param middled the flan as this side shows it, centred */
    Photo side(Flan middled, Die die, Strike strike, double dieRadius, double toned, Later later, long sideSeed) {
        double fine = pixelsPerMm * FINER;
        int width = FINER * pixels(Flan::horizontal);
        int height = FINER * pixels(Flan::vertical);
        AffineTransform place = AffineTransform.getTranslateInstance(width / 2.0, height / 2.0);
        place.scale(fine, fine);
        Face face = new Face(middled, place, width, height, sideSeed);
        face.strike(die, strike, dieRadius, metal.look(seed).rough());
        later.work(face.onTop(), fine);
        return Photo.of(face, metal.look(seed), sideSeed, toned);
    }

    /** Of both pictures alike, so that one width holds for both. */
    int pixels(ToDoubleFunction<Flan> extent) {
        Truth truth = truth();
        double most = Math.max(extent.applyAsDouble(truth.obverse()), extent.applyAsDouble(truth.reverse()));
        return (int) Math.ceil((most + 2 * margin) * pixelsPerMm);
    }

    Field[] photograph(Photo photo, Backdrop backdrop, double soft, double grain) {
        return new Camera(FINER, soft, grain, seed).expose(photo, backdrop, pixelsPerMm * FINER);
    }
}
