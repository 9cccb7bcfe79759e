package exergue.dating;

import java.util.Comparator;
import java.util.OptionalInt;

/** When something was made: at one date, or between two. */
public sealed interface Dating {

    /** Earlier first; of two that begin in the same year, the one that ends earlier. What has no beginning stands first. */
    Comparator<Dating> BY_DATE = Comparator
            .comparingInt((Dating dating) -> dating.earliest().orElse(Integer.MIN_VALUE))
            .thenComparingInt(dating -> dating.latest().orElse(Integer.MAX_VALUE))
            .thenComparing(Dating::edtf);

    /** The text as it stands in the entry. */
    String edtf();

    /** The first year it can mean, as EDTF counts; empty where the beginning is open or unknown. */
    OptionalInt earliest();

    /** The last year it can mean; empty where the end is open or unknown. */
    OptionalInt latest();

    /** True where no year can belong to both. */
    default boolean isApartFrom(Dating other) {
        return latest().orElse(Integer.MAX_VALUE) < other.earliest().orElse(Integer.MIN_VALUE)
                || other.latest().orElse(Integer.MAX_VALUE) < earliest().orElse(Integer.MIN_VALUE);
    }

    /** One date. */
    record Once(String edtf, CalendarDate date) implements Dating {

        @Override
        public OptionalInt earliest() {
            return OptionalInt.of(date.years().first());
        }

        @Override
        public OptionalInt latest() {
            return OptionalInt.of(date.years().last());
        }
    }

    /** From one date to another; at least one of them is {@link End.At}. */
    record Span(String edtf, End from, End to) implements Dating {

        @Override
        public OptionalInt earliest() {
            return from instanceof End.At at ? OptionalInt.of(at.date().years().first()) : OptionalInt.empty();
        }

        @Override
        public OptionalInt latest() {
            return to instanceof End.At at ? OptionalInt.of(at.date().years().last()) : OptionalInt.empty();
        }
    }

    /** One end of a span. */
    sealed interface End {

        record At(CalendarDate date) implements End { }

        /** {@code ..}: it goes on; nothing: it ended, and nobody knows when. */
        enum Without implements End { OPEN, UNKNOWN }
    }
}
