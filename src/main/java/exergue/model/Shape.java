package exergue.model;

/** The outline of the flan. */
public enum Shape {
    ROUND("round"), OVAL("oval"), SQUARE("square"), RECTANGULAR("rectangular"), POLYGONAL("polygonal"),
    IRREGULAR("irregular");

    private final String word;

    Shape(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** True where one diameter cannot describe the flan and two are wanted. */
    public boolean wantsTwoDiameters() {
        return this == SQUARE || this == RECTANGULAR;
    }
}
