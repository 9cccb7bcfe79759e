package exergue.measure;

/** What a unit is a unit of. Diameter and thickness are two kinds of reading and one dimension. */
public enum Dimension {
    MASS("gram"), LENGTH("millimetre"), TURN("hour"), DENSITY("gram-per-cubic-centimetre"), AREA("square-millimetre");

    private final String normalUnit;

    Dimension(String normalUnit) {
        this.normalUnit = normalUnit;
    }

    /** Id of the unit the book prints and every figure is compared in. */
    String normalUnit() {
        return normalUnit;
    }
}
