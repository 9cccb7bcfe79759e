package exergue.measure;

/** What a reading is a reading of. */
public enum Kind {
    WEIGHT("weight", Dimension.MASS), DIAMETER("diameter", Dimension.LENGTH), AXIS("axis", Dimension.TURN),
    THICKNESS("thickness", Dimension.LENGTH), DENSITY("density", Dimension.DENSITY), SURFACE("surface", Dimension.AREA);

    private final String word;
    private final Dimension dimension;

    Kind(String word, Dimension dimension) {
        this.word = word;
        this.dimension = dimension;
    }

    /** The trade's word, as it stands as a key in an entry. */
    public String word() {
        return word;
    }

    /** True for what is expected of every coin; the others are there only where somebody measured them. */
    public boolean isUsual() {
        return this == WEIGHT || this == DIAMETER || this == AXIS;
    }

    /** With its article: "a weight", "an axis". */
    String one() {
        return (this == AXIS ? "an " : "a ") + word;
    }

    /** Which units a reading of this kind may stand in. */
    public Dimension dimension() {
        return dimension;
    }
}
