package exergue.photo;

/**
 * What the coin lies on.
 *
 * @param noise how much its pixels differ from an even or gently changing ground, as a standard deviation of samples 0 to 1
 */
public record Background(Kind kind, double red, double green, double blue, double noise) {

    private static final double LIGHT = 0.62;
    private static final double DARK = 0.30;
    private static final double COLOURED = 0.12;

    /** As one would say over the telephone. */
    public enum Kind {
        LIGHT("light"), MIDDLE("grey"), DARK("dark"), COLOURED("coloured");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    static Background of(double red, double green, double blue, double noise) {
        double most = Math.max(red, Math.max(green, blue));
        double least = Math.min(red, Math.min(green, blue));
        Kind kind = most - least > COLOURED ? Kind.COLOURED : most > LIGHT ? Kind.LIGHT : most < DARK ? Kind.DARK : Kind.MIDDLE;
        return new Background(kind, red, green, blue, noise);
    }
}
