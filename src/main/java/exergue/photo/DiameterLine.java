package exergue.photo;

import exergue.measure.Convention;
import exergue.measure.Reading;

/** Along which line a recorded diameter was taken: what its convention says, and what two figures say of themselves. */
public enum DiameterLine {

    GREATEST("the greatest"), TOP_TO_BOTTOM("top to bottom"), SIDE_TO_SIDE("side to side"),
    /** Of the diameters in all directions. */
    MEAN("in the mean"),
    /** Of "18 x 17 mm", the greater: the longer side of the smallest rectangle that holds the flan, square or oval. */
    LONGER_SIDE("the longer side"),
    /** Nobody says it: any diameter of the coin may be meant. Where one has to be chosen, the greatest. */
    NOT_SAID("the greatest");

    private final String words;

    DiameterLine(String words) {
        this.words = words;
    }

    /** @param form of the reading; of two figures the greater is meant */
    public static DiameterLine of(Reading.Form form, Convention.Direction direction) {
        return switch (form) {
            case TWO_WAY -> LONGER_SIDE;
            case RANGE -> GREATEST;
            case SINGLE -> switch (direction) {
                case GREATEST, LEAST_AND_GREATEST -> GREATEST;
                case TOP_TO_BOTTOM -> TOP_TO_BOTTOM;
                case SIDE_TO_SIDE -> SIDE_TO_SIDE;
                case MEAN -> MEAN;
                case NOT_SAID, FROM_PHOTOGRAPH -> NOT_SAID;
            };
        };
    }

    /** As in "19.4 mm, top to bottom". */
    public String words() {
        return words;
    }

    /** True of those that lie another way on the photograph of the other side. */
    public boolean isFixed() {
        return this == TOP_TO_BOTTOM || this == SIDE_TO_SIDE;
    }

    /** The diameter of the outline along this line, in its own unit. */
    public double on(Outline outline) {
        return switch (this) {
            case GREATEST, NOT_SAID -> outline.greatest().length();
            case TOP_TO_BOTTOM -> outline.vertical();
            case SIDE_TO_SIDE -> outline.horizontal();
            case MEAN -> outline.hull().perimeter() / Math.PI; // Cauchy: of a convex figure the mean width in all directions
            case LONGER_SIDE -> outline.longerSide();
        };
    }
}
