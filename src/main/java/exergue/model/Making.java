package exergue.model;

/** How the coin was made, as far as it decides what its axis means. */
public enum Making {
    STRUCK("struck"), CAST("cast"), PUNCHED("punched"), MACHINE_STRUCK("machine-struck");

    private final String word;

    Making(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
