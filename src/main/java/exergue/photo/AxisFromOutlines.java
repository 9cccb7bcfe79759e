package exergue.photo;

/** What two outlines of one coin tell of its die-axis. */
public sealed interface AxisFromOutlines {

    /**
     * @param degrees    how far the reverse is turned clockwise, 0 to just under 360
     * @param confidence 0 to 1: how much better the outlines fit at this angle than at any other
     * @param second     the next best angle, in degrees
     */
    record Angle(double degrees, double confidence, double second) implements AxisFromOutlines {

        private static final double DEGREES_PER_HOUR = 30;

        /** On the clock, more than 0 and at most 12; not rounded. */
        public double hours() {
            return degrees == 0 ? 12 : degrees / DEGREES_PER_HOUR;
        }

        /** The nearest whole hour, 1 to 12. */
        public int hour() {
            long hour = Math.round(degrees / DEGREES_PER_HOUR) % 12;
            return hour == 0 ? 12 : (int) hour;
        }
    }

    /** No answer rather than a guess. */
    record CannotTell(Reason reason) implements AxisFromOutlines { }

    /** Why the outlines do not tell. */
    enum Reason {
        TOO_ROUND("the flan is too nearly round"),
        NOT_ALIKE("the two outlines are not those of one flan"),
        FITS_TWICE("the outlines fit at more than one angle");

        private final String words;

        Reason(String words) {
            this.words = words;
        }

        /** As a part of a sentence: "the flan is too nearly round". */
        public String words() {
            return words;
        }
    }
}
