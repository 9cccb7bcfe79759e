package exergue.dating;

/** Everything that can be wrong with a date. Carries what its page in the docs says. */
public enum DatingFault {

    NOT_EDTF("date-not-edtf", "A date is not written in EDTF",
            "Dates stand in the data in one form, EDTF (ISO 8601-2), so that they can be sorted, compared and printed as "
                    + "the house says. EDTF has a year 0, which is 1 BC; 120 BC is therefore -0119. A stroke stands between "
                    + "the ends of a span, ~ after a date means about, ? means uncertain, % means both.",
            "date: c. 120–110 BC", "date: -0119~/-0109~"),

    YEAR_DIGITS("date-year-digits", "A year of a date does not have four digits",
            "EDTF writes years with four digits, and years BC with a minus sign, counted from a year 0. A shorter figure may "
                    + "be a year BC that was not converted, so it is not guessed.",
            "date: -120", "date: -0119   # 120 BC"),

    OUT_OF_RANGE("date-out-of-range", "A month or a day of a date does not exist",
            "Months go from 01 to 12, seasons from 21 (spring) to 24 (winter), and days to the end of their month. Anything "
                    + "else is a slip of the pen.",
            "date: 0117-13", "date: 0117-12"),

    BACKWARDS("date-backwards", "A span of dates ends before it begins",
            "Years BC count down, but in EDTF they have a minus sign, and the earlier year is the one further from zero: "
                    + "120–110 BC is -0119/-0109.",
            "date: -0109/-0119", "date: -0119/-0109"),

    SAYS_NOTHING("date-says-nothing", "A date has no year",
            "A date without any year, or a span that is open at both ends, says nothing of when a coin was struck; leaving "
                    + "it out says the same.",
            "date: XXXX", "date: -01XX"),

    NOT_TAKEN("date-form-not-taken", "A date has a form of EDTF that Exergue does not print",
            "Times of day, sets of dates, years with exponents and significant digits belong to EDTF, but no catalogue prints "
                    + "them of a coin.",
            "date: \"[-0119,-0109]\"", "date: -0119/-0109");

    private final String id;
    private final String title;
    private final String why;
    private final String faulty;
    private final String mended;

    DatingFault(String id, String title, String why, String faulty, String mended) {
        this.id = id;
        this.title = title;
        this.why = why;
        this.faulty = faulty;
        this.mended = mended;
    }

    public String id() {
        return id;
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
