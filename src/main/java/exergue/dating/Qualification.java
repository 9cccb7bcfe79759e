package exergue.dating;

/** What EDTF's signs after a date say of it. */
public enum Qualification {

    NONE(""), UNCERTAIN("?"), APPROXIMATE("~"), BOTH("%");

    private final String sign;

    Qualification(String sign) {
        this.sign = sign;
    }

    public String sign() {
        return sign;
    }

    public boolean uncertain() {
        return this == UNCERTAIN || this == BOTH;
    }

    public boolean approximate() {
        return this == APPROXIMATE || this == BOTH;
    }

    static Qualification of(boolean uncertain, boolean approximate) {
        if (uncertain) {
            return approximate ? BOTH : UNCERTAIN;
        }
        return approximate ? APPROXIMATE : NONE;
    }

    /** What any of these signs says is said of the whole. */
    static Qualification ofSigns(String signs) {
        boolean both = signs.contains("%");
        return of(both || signs.contains("?"), both || signs.contains("~"));
    }
}
