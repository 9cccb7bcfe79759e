package exergue.model;

/** What has changed a coin's weight since it left the mint. */
public enum Damage {
    BROKEN("broken"), CHIPPED("chipped"), PIERCED("pierced"), CLIPPED("clipped"), MOUNTED("mounted"),
    PLUGGED("plugged"), CORRODED("corroded"), UNCLEANED("uncleaned");

    private final String word;

    Damage(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
