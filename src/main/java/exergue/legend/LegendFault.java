package exergue.legend;

/** Everything that can be wrong with the signs of a legend. Carries what its page in the docs says. */
public enum LegendFault {

    UNBALANCED("legend-unbalanced", "A bracket of a legend is not closed, or not opened",
            "In the Leiden system a bracket says where what is lost, restored or erased begins and where it ends. With one of "
                    + "a pair missing, the reader cannot tell which letters are on the coin.",
            "legend: ΒΑΣΙΛΕΩΣ ΤΗΛΑΝ[ΟΡΟΣ", "legend: ΒΑΣΙΛΕΩΣ ΤΗΛΑΝ[ΟΡΟΣ]"),

    CROSSED("legend-brackets-crossed", "Two brackets of a legend cross",
            "A bracket opened inside another must close before it; otherwise the letters between belong to neither.",
            "legend: \"ΒΑ[ΣΙ(ΛΕ]ΩΣ)\"", "legend: \"ΒΑ[ΣΙ](ΛΕΩΣ)\""),

    NESTED("legend-nested", "A bracket of a legend stands inside one that cannot hold it",
            "What the editor has added cannot be lost as well, and what is restored is not restored once more.",
            "legend: \"ΒΑ(ΣΙ[ΛΕΩΣ])\"", "legend: \"ΒΑ(ΣΙΛΕΩΣ)\""),

    EMPTY("legend-empty-brackets", "There is nothing between two brackets of a legend",
            "Empty brackets do not say how much is lost. A dot stands for each lost letter, three dashes where nobody knows "
                    + "how many there were.",
            "legend: \"ΒΑΣΙΛΕΩΣ []\"", "legend: \"ΒΑΣΙΛΕΩΣ [– – –]\""),

    LOOSE_MARK("legend-loose-mark", "A mark of a legend belongs to no letter",
            "The dot below says that a letter is damaged, the tie that two are joined; neither means anything alone.",
            "legend: \"ΒΑ \u0323ΣΙΛΕΩΣ\"", "legend: \"ΒΑΣ\u0323ΙΛΕΩΣ\""),

    MIXED_ALPHABETS("mixed-alphabets", "A word of a legend mixes Greek and Latin letters that look alike",
            "In print nobody sees the difference, but an index sorts the word wrongly, and whoever searches for it does not find it.",
            "legend: ΑPΚΗ (the P typed on an English keyboard)", "legend: ΑΡΚΗ (all Greek)");

    private final String id;
    private final String title;
    private final String why;
    private final String faulty;
    private final String mended;

    LegendFault(String id, String title, String why, String faulty, String mended) {
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
