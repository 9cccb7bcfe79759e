package exergue.measure;

/** The system a unit belongs to. Parts of one compound reading, such as 2 dwt 11 gr, come from one system. */
public enum UnitSystem {
    METRIC("metric"), TROY("English troy"), AVOIRDUPOIS("English avoirdupois"), ENGLISH_LENGTH("English lengths"),
    JEWELLERS("metric carat"), INDIAN("Indian"), FRENCH("French, poids de marc and pied du roi"),
    RUSSIAN("Russian"), SIZE_SCALE("printed size scale"), CLOCK("die-axis");

    private final String words;

    UnitSystem(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
