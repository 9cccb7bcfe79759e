package exergue.photo;

import java.util.stream.IntStream;

/** What came of looking for a scale bar on a picture. */
public sealed interface ScaleBarRead {

    /**
     * @param pixelsPerMm each division taken to be a millimetre
     * @param divisions   black and white ones that were counted; a white one at an end that runs into white ground is not seen
     * @param uneven      how much the divisions differ, as a standard deviation in parts of one
     * @param degrees     how the bar lies, clockwise from upright, 0 to 180: 90 for a level one
     * @param from        where the first division begins, in the middle of the bar’s width
     */
    record Read(double pixelsPerMm, int divisions, double uneven, double degrees, Point from, Point to) implements ScaleBarRead {

        private static final int STEPS = 8;

        /** True where it lies on the coin and beside it. */
        boolean touches(Outline coin) {
            long on = placesOn(coin);
            return on > 0 && on <= STEPS;
        }

        /** True where it lies on the coin altogether: then it is no bar, but something on the coin that looks like one. */
        boolean liesOn(Outline coin) {
            return placesOn(coin) > STEPS;
        }

        private long placesOn(Outline coin) {
            return IntStream.rangeClosed(0, STEPS).mapToObj(i -> new Point(from.x() + (to.x() - from.x()) * i / STEPS,
                    from.y() + (to.y() - from.y()) * i / STEPS)).filter(coin.edge()::contains).count();
        }
    }

    /** Nothing is read rather than guessed. */
    record NotRead(Reason reason) implements ScaleBarRead { }

    /** Why no scale is read. */
    enum Reason {
        NONE("there is no scale bar of black and white divisions"),
        TOO_SHORT("the scale bar shows fewer than five divisions"),
        UNEVEN("the divisions of the scale bar are not even: it lies aslant, or is not all to be seen"),
        BENT("the scale bar is not straight");

        private final String words;

        Reason(String words) {
            this.words = words;
        }

        /** As the end of a sentence: "the scale bar is not straight". */
        public String words() {
            return words;
        }
    }
}
