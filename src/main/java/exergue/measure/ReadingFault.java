package exergue.measure;

/**
 * Everything that can be wrong or worth a word in the text of a reading. Carries what its page in the docs says,
 * since this package knows nothing of findings.
 */
public enum ReadingFault {

    EMPTY_READING("empty-reading", true, "The measurement is empty",
            "An empty value can mean anything: not measured, lost, or forgotten while typing.",
            "weight: \"\"", "weight: \"missing: not recorded by the excavator\""),

    TOO_LONG("reading-too-long", true, "The text of the measurement is too long",
            "A reading is a figure and a unit. Long texts hide figures where no statistics and no "
                    + "reader will find them.",
            "weight: 3.87 g, " + "and so on ".repeat(40), "weight: 3.87 g"),

    NOT_A_READING("not-a-reading", true, "The text cannot be read as a measurement",
            "A figure that cannot be read cannot be compared or printed.",
            "weight: three grams", "weight: 3 g"),

    NO_REASON("absence-without-reason", true, "A measurement is absent and no reason is given",
            "Missing, not applicable and illegible are different things to a reader, and the methods "
                    + "statement says how many of each there are and why.",
            "weight: missing", "weight: \"missing: not recorded by the excavator\""),

    UNCLEAR_ABSENCE("unclear-absence", true, "It is not clear why there is no figure",
            "A dash can mean that nobody weighed the coin, that it cannot be weighed, or that the card is torn.",
            "axis: n/a", "axis: \"not applicable: uniface\""),

    OTHER_DIGITS("other-digits", true, "The figure is not written with the digits 0 to 9",
            "Full-width, raised or Eastern digits look right in one font and wrong in the next, and "
                    + "programs that read the data miss them.",
            "weight: ３.87 g", "weight: 3.87 g"),

    LETTER_FOR_FIGURE("letter-for-figure", true, "A letter stands where a figure should",
            "Scanned tables confuse O with 0 and l with 1. The eye reads over it; a sum does not.",
            "weight: 3.O7 g", "weight: 3.07 g"),

    UNKNOWN_SIGN("unknown-sign", true, "A sign has no meaning in a measurement",
            "Only figures, units, fractions, arrows and the signs × - < > ? are read, so that "
                    + "nothing is passed over in silence.",
            "weight: 3.87 g ±", "weight: c. 3.87 g"),

    OTHER_DECIMAL_MARK("other-decimal-mark", true, "The decimal mark is not that of the convention",
            "If points and commas are mixed in one source, 1,234 may be a thousand or a little more than one.",
            "weight: 3,87 g", "weight: 3.87 g"),

    THOUSANDS_MARK("thousands-or-decimals", true, "A point or comma may mark thousands or decimals",
            "The two readings differ a thousandfold, and neither is guessed.",
            "weight: 1,234 g", "weight: 1.234 g"),

    TOO_MANY_DIGITS("too-many-digits", true, "The figure has more digits than any instrument gives",
            "Long rows of digits come from a calculator, not from a balance, and pretend to a "
                    + "precision that is not there.",
            "weight: 3.8700000000001 g", "weight: 3.87 g"),

    IMPOSSIBLE_FRACTION("impossible-fraction", true, "The fraction is not a fraction of one",
            "A fraction such as 18/17 is more likely two directions of a diameter than a number.",
            "diameter: 18/17 mm", "diameter: 18 x 17 mm"),

    NO_UNIT("figure-without-unit", true, "The figure has no unit",
            "Without a unit, 59.7 may be grains or grammes. The convention of a source can name its "
                    + "unit once for all its figures.",
            "weight: 3.87", "weight: 3.87 g"),

    UNKNOWN_UNIT("unknown-unit", true, "The unit is not known",
            "A figure in an unknown unit cannot be converted or compared.",
            "weight: 3.87 gx", "weight: 3.87 g"),

    UNIT_OF_ANOTHER_KIND("unit-of-another-kind", true, "The unit belongs to another kind of measurement",
            "A diameter in grams is a figure in the wrong line.",
            "diameter: 18 g", "diameter: 18 mm"),

    GR_NOT_SAID("gr-not-said", true, "It is not said whether gr means grains or grammes",
            "In older English books gr is grains, in French ones grammes. The two differ "
                    + "fifteenfold, so it is never guessed.",
            "weight: 59.7 gr", "weight: 59.7 grains"),

    OUNCE_NOT_SAID("ounce-not-said", true, "It is not said which ounce is meant",
            "The troy ounce is a tenth heavier than the avoirdupois ounce.",
            "weight: 1 oz", "weight: 1 oz t"),

    DRAM_NOT_SAID("dram-not-said", true, "It is not said which dram is meant",
            "The apothecaries’ dram of 60 grains is more than twice the avoirdupois dram, and old books call both a dram.",
            "weight: 2 drams", "weight: 2 dr ap"),

    PARTS_DO_NOT_ADD("parts-do-not-add", true, "The parts of the weight do not make one weight",
            "Parts are added only where they plainly belong together: one system, the larger unit "
                    + "first, fractions only at the end.",
            "weight: 11 grains 2 dwt", "weight: 2 dwt 11 grains"),

    ONE_FIGURE_ONLY("one-figure-only", true, "This kind of measurement is one figure",
            "Two directions and ranges belong to a diameter. A coin weighed twice has two "
                    + "measurements, each with its own hand.",
            "weight: 3.8-3.9 g", "weight: c. 3.85 g"),

    RANGE_BACKWARDS("range-backwards", true, "The range goes from the greater to the smaller",
            "Written that way it may be a slip, or two directions that are not a range.",
            "diameter: 19-17 mm", "diameter: 17-19 mm"),

    NOT_POSITIVE("not-positive", true, "The measurement is nought or negative",
            "Every coin weighs something. A nought is mostly a mark for not measured.",
            "weight: 0 g", "weight: \"missing: not weighed\""),

    BEYOND_ANY_COIN("beyond-any-coin", true, "No coin is as large or as small as that",
            "The figure or its unit must be a slip.",
            "weight: 387000 kg", "weight: 3.87 g"),

    NO_SIZE_SCALE("size-without-scale", true, "A size number needs the name of its printed scale",
            "Mionnet’s scale was a drawing that came out in another size at each printing: size 7 is "
                    + "26 mm in one and 40 mm in another.",
            "diameter: size 5", "diameter: 21 mm"),

    SIZE_NOT_IN_TABLE("size-not-in-table", true, "The size is not in the table of that printing",
            "Sizes between and beyond the printed ones were never drawn, and guessing them would "
                    + "look like a measurement.",
            "diameter: size 5½", "diameter: size 5"),

    TWO_QUALIFIERS("two-qualifiers", true, "The reading says in two ways how sure it is",
            "The book prints one sign before or after a figure.",
            "weight: c. 3.87 g?", "weight: c. 3.87 g"),

    HOUR_BEYOND_TWELVE("hour-beyond-twelve", true, "The clock face has no such hour",
            "Die-axes are told on a clock face of twelve hours.",
            "axis: 18 h", "axis: 6 h"),

    HOURS_OR_MINUTES("hours-or-minutes", true, "The axis may be hours with minutes or with decimals",
            "6.15 may mean a quarter past six or the decimal, which is nine minutes past.",
            "axis: 6.15 h", "axis: 6:15 h"),

    ARROWS_UNCLEAR("arrows-unclear", true, "The arrows do not give one die-axis",
            "One arrow shows the reverse; two show the obverse upright and then the reverse.",
            "axis: ↓↓", "axis: ↑↓"),

    WEIGHINGS_UNCLEAR("weighings-unclear", true, "The weighings do not give a density",
            "A density follows from a weight in air, a weight in water and the temperature of the water; with one of them "
                    + "missing or doubtful it would be a guess. Weigh only coins that a conservator says may be wetted.",
            "density: 14.103 g in air", "density: 14.103 g in air, 13.081 g in water, 20 °C"),

    WATER_TEMPERATURE("water-temperature", true, "The temperature of the water is missing or out of range",
            "Water grows lighter as it grows warmer, enough to show in the density of a coin.",
            "density: 14.103 g in air, 13.081 g in water", "density: 14.103 g in air, 13.081 g in water, 20 °C"),

    NOT_LIGHTER_IN_WATER("not-lighter-in-water", true, "The coin does not weigh less in water than in air",
            "Water bears part of the weight of whatever hangs in it, so one of the two weighings must be a slip.",
            "density: 13.081 g in air, 14.103 g in water, 20 °C", "density: 14.103 g in air, 13.081 g in water, 20 °C"),

    AXIS_MIDWAY("axis-midway", false, "The axis lies midway between two hours",
            "It is kept and printed as a half hour, since rounding it either way would invent an observation. Nothing is "
                    + "said where the convention of the source gives its axes a resolution of half an hour or finer.",
            "axis: 6½ h", "axis: 6 h"),

    DEGREES_NORMALISED("degrees-normalised", false, "The degrees lie outside one circle",
            "They are brought into the circle; if the source counts them otherwise, its convention "
                    + "should say so.",
            "axis: -30°", "axis: 330°"),

    UNUSUAL_FOR_A_COIN("unusual-for-a-coin", false, "The figure would be very unusual for a coin",
            "A lost decimal mark or a wrong unit is likelier.",
            "weight: 3870 g", "weight: 3.87 g"),

    FINER_THAN_INSTRUMENT("finer-than-instrument", false, "The figure is finer than its instrument",
            "Digits that the instrument cannot show mean nothing; the book prints to the step the "
                    + "convention gives.",
            "weight: 3.875 g", "weight: 3.9 g");

    private final String id;
    private final boolean refused;
    private final String title;
    private final String why;
    private final String faulty;
    private final String mended;

    ReadingFault(String id, boolean refused, String title, String why, String faulty, String mended) {
        this.id = id;
        this.refused = refused;
        this.title = title;
        this.why = why;
        this.faulty = faulty;
        this.mended = mended;
    }

    public String id() {
        return id;
    }

    /** True where the text gives no reading at all; false where it does and the reader should know something. */
    public boolean refused() {
        return refused;
    }

    public String title() {
        return title;
    }

    public String why() {
        return why;
    }

    public String faulty() {
        return faulty;
    }

    public String mended() {
        return mended;
    }
}
