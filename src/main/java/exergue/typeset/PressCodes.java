package exergue.typeset;

import exergue.finding.Code;
import exergue.finding.Severity;
import java.util.List;

/** What a printer would send a file back for, or ask about. */
public final class PressCodes {

    public static final Code LOW_RESOLUTION = new Code("low-resolution", Severity.WARNING,
            "A picture has too few pixels for its printed size",
            "Printers and publishers ask for 300 pixels an inch at the printed size for photographs, and 600 to 1200 "
                    + "for line art, that is pictures of black and white alone. With fewer, a coin looks soft and a "
                    + "line looks like stairs. A coin of 25 mm printed at its own size needs 296 pixels across.",
            "photograph: {obverse: photographs/small.jpg}   # 150 pixels for a coin of 25 mm",
            "photograph: {obverse: photographs/large.jpg}   # 600 pixels for a coin of 25 mm");

    public static final Code RGB_PICTURES = new Code("rgb-pictures", Severity.NOTE,
            "Pictures are in RGB",
            "Colour pictures stay in the colours of the screen (sRGB), and the file says so. A press prints with four "
                    + "inks; most printers convert such pictures themselves and do it better than the author could, "
                    + "but they want to know.",
            "photographs/lk-1.jpg in RGB, and nothing said to the printer",
            "photographs/lk-1.jpg in grey, or the printer asked to convert from sRGB");

    public static final Code NO_BLEED = new Code("no-bleed", Severity.WARNING,
            "A picture ends at the trimmed edge",
            "Paper is cut with a tolerance. A picture that ends just where the page is cut shows a white hairline when "
                    + "the cut falls a little outside. It has to go on for 3 mm beyond the edge, or to stay clear of "
                    + "it. The page engine paints nothing beyond the page, so that here it has to stay clear.",
            ".figure img { margin-left: -30mm }", ".figure img { margin-left: 0 }");

    public static final Code SHEETS = new Code("sheets-not-filled", Severity.NOTE,
            "The pages do not fill whole sheets",
            "Books are printed on sheets that are folded to 4, 8 or 16 pages. What the last sheet lacks is added as "
                    + "blank pages at the end, which the printer will ask about.",
            "a book of 58 pages", "a book of 64 pages, or one of 58 with six blank ones agreed with the printer");

    private PressCodes() { }

    /** Every code of the file for the press. */
    public static List<Code> all() {
        return List.of(LOW_RESOLUTION, RGB_PICTURES, NO_BLEED, SHEETS);
    }
}
