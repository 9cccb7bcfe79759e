package exergue.measure;

/**
 * Everything that can be wrong or worth a word in the text of a reading. Carries what its page in the docs says,
 * since this package knows nothing of findings.
 */
public enum ReadingFault {

    NOT_A_READING("not-a-reading", true, "The text cannot be read as a measurement",
            "A figure that cannot be read cannot be compared or printed.",
            "weight: three grams", "weight: 3 g");

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
