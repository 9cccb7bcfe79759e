package exergue.study.match;

/** How sure it is which coin a fresh one is, all fresh coins taken together. The limits are a choice, no source. */
public enum Sureness {

    /** The best answer with any other coin in its place is less than a hundredth as probable. */
    SURE("sure"),
    /** Less than a tenth as probable. */
    LIKELY("likely"),
    /** Another answer is nearly as good. */
    OPEN("open"),
    /** Nothing in the catalogue fits better than some coin that is not in it. */
    NO_ENTRY("no entry");

    private static final double SURE_ODDS = Math.log(100);
    private static final double LIKELY_ODDS = Math.log(10);

    private final String words;

    Sureness(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** @param margin logarithm of how many times more probable the best answer is than the next */
    static Sureness of(double margin) {
        return margin >= SURE_ODDS ? SURE : margin >= LIKELY_ODDS ? LIKELY : OPEN;
    }
}
