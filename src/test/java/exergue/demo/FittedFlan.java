package exergue.demo;

import java.awt.geom.AffineTransform;
import java.util.function.ToDoubleFunction;

/** Brings a flan to the measurements that were recorded for the coin, by drawing it out in one direction. */
final class FittedFlan {

    private FittedFlan() { }

    /** Scaled until what is measured on it is so many millimetres. */
    static Flan to(Flan flan, ToDoubleFunction<Flan> measure, double millimetres) {
        return flan.scaled(millimetres / measure.applyAsDouble(flan));
    }

    /**
     * Of this height from top to bottom, and drawn out, within 40 degrees of the level or from top to bottom as need be,
     * until its greatest diameter is as given.
     */
    static Flan vertical(Flan flan, double aslant, double vertical, double greatest) {
        double ratio = greatest / vertical;
        boolean tooWide = flan.greatest() / flan.vertical() > ratio;
        double degrees = tooWide ? 90 : aslant;
        double low = 1.0;
        double high = tooWide ? 1.08 : 1.5;
        for (int step = 0; step < 22; step++) {
            double middle = (low + high) / 2;
            Flan drawn = drawn(flan, degrees, middle);
            if (drawn.greatest() / drawn.vertical() < ratio != tooWide) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return to(drawn(flan, degrees, tooWide ? high : low), Flan::vertical, vertical);
    }

    /** Drawn out along a direction until the least and the greatest diameter are both as given. */
    static Flan leastAndGreatest(Flan flan, double degrees, double least, double greatest) {
        double low = 0.95;
        double high = 2.0;
        for (int step = 0; step < 26; step++) {
            double middle = (low + high) / 2;
            Flan drawn = drawn(flan, degrees, middle);
            if (drawn.greatest() / drawn.least() < greatest / least) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return to(drawn(flan, degrees, low), Flan::greatest, greatest);
    }

    /** Of this height and this breadth. */
    static Flan twoWay(Flan flan, double vertical, double horizontal) {
        return flan.moved(AffineTransform.getScaleInstance(horizontal / flan.horizontal(), vertical / flan.vertical()));
    }

    private static Flan drawn(Flan flan, double degrees, double times) {
        AffineTransform how = AffineTransform.getRotateInstance(Math.toRadians(degrees));
        how.scale(times, 1);
        how.rotate(Math.toRadians(-degrees));
        return flan.moved(how);
    }
}
