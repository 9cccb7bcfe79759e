package exergue.legend;

import java.util.List;
import java.util.OptionalInt;

/** One piece of a legend. */
public sealed interface Part {

    /** Letters, spaces, dashes and dividing marks that can be read on the coin. */
    record Plain(String text) implements Part { }

    /** Letters with dots below: damaged. @param letters without their dots */
    record Damaged(String letters) implements Part { }

    /** Letters cut as one sign. @param letters without their ties, damaged ones with their dots */
    record Ligature(String letters) implements Part { }

    /** A line ends. @param sign as typed: {@code |} or {@code /} */
    record LineEnd(String sign) implements Part { }

    /** Lost letters. @param count empty where nobody knows how many */
    record Lost(OptionalInt count) implements Part { }

    /** What stands in brackets of one kind; never empty. */
    record Bracketed(Bracket bracket, List<Part> parts) implements Part {
        public Bracketed {
            parts = List.copyOf(parts);
        }
    }
}
