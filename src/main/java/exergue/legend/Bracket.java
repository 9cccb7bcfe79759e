package exergue.legend;

import java.util.Optional;
import java.util.Set;

/** The brackets of the Leiden system, as printed. */
public enum Bracket {

    RESTORED("[", "]", "lost and restored"),
    EXPANDED("(", ")", "written out by the editor"),
    OMITTED("⟨", "⟩", "left out by the cutter"),
    SUPERFLUOUS("{", "}", "cut by mistake"),
    ERASED("⟦", "⟧", "erased");

    private final String open;
    private final String close;
    private final String meaning;

    Bracket(String open, String close, String meaning) {
        this.open = open;
        this.close = close;
        this.meaning = meaning;
    }

    public String open() {
        return open;
    }

    public String close() {
        return close;
    }

    /** What letters inside are, in words. */
    public String meaning() {
        return meaning;
    }

    /** True where the letters inside stand, or stood, on the coin, so that they can be lost. */
    boolean countsLosses() {
        return this == RESTORED || this == ERASED;
    }

    /** True where the letters inside can be seen. */
    boolean isSeen() {
        return this == SUPERFLUOUS || this == ERASED;
    }

    boolean mayHold(Bracket inner) {
        return switch (this) {
            case RESTORED -> Set.of(EXPANDED, OMITTED, ERASED).contains(inner);
            case ERASED -> inner != ERASED;
            case SUPERFLUOUS -> inner == RESTORED;
            case EXPANDED, OMITTED -> false;
        };
    }

    static Optional<Bracket> opening(String sign) {
        for (Bracket bracket : values()) {
            if (bracket.open.equals(sign)) {
                return Optional.of(bracket);
            }
        }
        return Optional.empty();
    }

    static Optional<Bracket> closing(String sign) {
        for (Bracket bracket : values()) {
            if (bracket.close.equals(sign)) {
                return Optional.of(bracket);
            }
        }
        return Optional.empty();
    }
}
