package exergue.measure;

/**
 * A slip by which one figure comes to stand for another.
 *
 * <p>Two figures can be told to be one slip apart, but often not which of them is the slip: see {@link #eitherWay()}.
 */
public enum Slip {

    OTHER_UNIT("one unit taken for another", false),
    DECIMAL_POINT("the decimal point one place off", true),
    DIGITS_SWAPPED("two digits swapped", true),
    DIGIT_MISREAD("one digit read for another of like shape", true),
    MIRRORED("the axis read on the mirror image or counted anticlockwise", true),
    UP_AND_DOWN("half a turn, as when 6 h and 12 h are confused or the coin is turned top over bottom", true);

    private final String words;
    private final boolean eitherWay;

    Slip(String words, boolean eitherWay) {
        this.words = words;
        this.eitherWay = eitherWay;
    }

    /** The slip, as a message names it after "the probable cause is". */
    public String words() {
        return words;
    }

    /** True where the slip leads from either of the two figures to the other. */
    public boolean eitherWay() {
        return eitherWay;
    }
}
