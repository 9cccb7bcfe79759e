package exergue.photo.print;

import exergue.finding.Code;
import exergue.finding.Severity;
import java.util.List;

/** What can be wrong with a photograph that is to be printed. */
public final class PrintCodes {

    public static final Code UNPRINTABLE = new Code("photograph-unprintable", Severity.ERROR,
            "A photograph cannot be printed",
            "A file that is damaged, not complete, or no picture cannot be printed. Nor can one of more than 100 million pixels, "
                    + "which would take more memory than there is; what a file claims to hold is looked at before it is opened.",
            "photograph: {obverse: photographs/half-copied.jpg}", "photograph: {obverse: photographs/lk-1-obv.jpg}");

    public static final Code NOT_CUT_OUT = new Code("coin-not-cut-out", Severity.WARNING,
            "A coin cannot be cut out of its photograph",
            "Coins are printed on white, cut out along their edge, and their size on paper is taken from that edge. Where it cannot "
                    + "be told with certainty from what the coin lies on, nothing is guessed: the photograph is printed as it is.",
            "a coin on a patterned cloth, or cut by the edge of the picture", "a coin on plain paper, with some of it all round");

    public static final Code TWO_SIDES = new Code("two-sides-in-one-file", Severity.NOTE,
            "A photograph shows two sides and is named for one",
            "The left of them is printed as the obverse, the right as the reverse. If the entry names the file for both, nobody has to wonder.",
            "photograph: {obverse: photographs/lk-1.jpg}",
            "photograph: {obverse: photographs/lk-1.jpg, reverse: photographs/lk-1.jpg}");

    public static final Code CLIPPED = new Code("highlights-clipped", Severity.WARNING,
            "A photograph has white spots in which nothing is to be seen",
            "Where light from the metal was too bright for the camera, all pixels are as white as can be, and no later work brings "
                    + "back what was there. On paper such places look like holes. Up to twenty in a thousand pixels of a coin pass "
                    + "(a bound of this program’s; common practice, no source).",
            "a silver coin under a bare lamp", "the same coin under soft light, with a shorter exposure");

    public static final Code OTHER_LIGHT = new Code("light-differs-on-plate", Severity.NOTE,
            "A coin on a plate was photographed in another light than the others",
            "Pictures of many hands stand side by side on a plate, and one that is much darker, lighter, flatter or harder than the "
                    + "rest looks as if the coin itself were so. Compared are the mean and the spread of the greys within the "
                    + "outlines of coins of one metal, if there are four or more; a mean 40 of 255 away, or a spread of less than "
                    + "half or more than twice, is told. The bounds are this program’s own (common practice, no source).",
            "photograph: {obverse: photographs/lk-7-by-lamplight.jpg}", "photograph: {obverse: photographs/lk-7-obv.jpg}");

    private PrintCodes() { }

    /** Every code of the printed photographs. */
    public static List<Code> all() {
        return List.of(UNPRINTABLE, NOT_CUT_OUT, TWO_SIDES, CLIPPED, OTHER_LIGHT);
    }
}
