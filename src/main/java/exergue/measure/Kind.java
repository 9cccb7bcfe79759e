package exergue.measure;

/** What a reading is a reading of. */
public enum Kind {
    WEIGHT("weight"), DIAMETER("diameter"), AXIS("axis"), THICKNESS("thickness");

    private final String word;

    Kind(String word) {
        this.word = word;
    }

    /** The trade's word, as it stands as a key in an entry. */
    public String word() {
        return word;
    }
}
