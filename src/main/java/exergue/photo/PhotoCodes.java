package exergue.photo;

import exergue.finding.Code;
import exergue.finding.Severity;
import java.util.List;

/** Every code this stage raises. */
public final class PhotoCodes {

    static final Code AXIS = new Code("axis-not-as-photographed", Severity.WARNING,
            "An axis is more than an hour off what the two photographs show",
            "The edge of the reverse is that of the obverse seen from behind. Where the flan is not quite round, the two edges "
                    + "fit in one way only, and the angle between them is the axis between the designs as they stand on the "
                    + "photographs. A recorded axis that is more than an hour off is often read on the mirror image: 5 h for "
                    + "7 h. Or one of the photographs does not stand upright.",
            """
                    # the photographs show 7 h
                    axis: 5 h
                    """,
            """
                    axis: 7 h
                    """);

    static final Code DIAMETER = new Code("diameter-not-as-photographed", Severity.WARNING,
            "A diameter is not what the photograph shows at its own scale",
            "The photograph has a scale: a bar of millimetres, or the width that the entry gives. Measured by it, along the line "
                    + "that the convention of the measurement says, the coin is larger or smaller than recorded, by more than "
                    + "3 % and what the record was rounded to. One of the three is wrong: the diameter, the scale, or the "
                    + "line along which it is said to be taken.",
            """
                    # 19.4 mm on the photograph
                    diameter: 14.9 mm
                    """,
            """
                    diameter: 19.4 mm
                    """);

    static final Code SCALES = new Code("width-not-as-scale-bar", Severity.WARNING,
            "The width that the entry gives is not that of the scale bar",
            "The entry says how wide the whole picture is at life size, and a scale bar on the picture says so too. Where the "
                    + "two are more than 3 % apart the coin is printed too large or too small.",
            """
                    # by its scale bar the picture is 31.2 mm wide
                    photograph: {obverse: photographs/lk-1.jpg, width: 24.3 mm}
                    """,
            """
                    photograph: {obverse: photographs/lk-1.jpg, width: 31.2 mm}
                    """);

    static final Code NOT_MEASURED = new Code("photograph-not-measured", Severity.NOTE,
            "No outline of the coin is found on a photograph",
            "Diameters and axes can be compared with a photograph only where the edge of the coin stands out from a plain ground. "
                    + "Rather than guess, nothing is measured, and the picture is printed as it is.",
            """
                    # the coin lies on a patterned cloth
                    photograph: {obverse: photographs/lk-1.jpg}
                    """,
            """
                    # photographed anew on plain paper
                    photograph: {obverse: photographs/lk-1.jpg}
                    """);

    static final Code NOT_READ = new Code("photograph-not-read", Severity.WARNING,
            "A photograph cannot be read",
            "The file is there, but it is damaged, cut short, or claims to have more pixels than any camera gives. It cannot be "
                    + "measured, and probably not printed.",
            """
                    # the file was cut short when it was copied
                    photograph: {obverse: photographs/lk-1.jpg}
                    """,
            """
                    # copied anew
                    photograph: {obverse: photographs/lk-1.jpg}
                    """);

    private PhotoCodes() { }

    public static List<Code> all() {
        return List.of(AXIS, DIAMETER, SCALES, NOT_MEASURED, NOT_READ);
    }
}
