package exergue.measure;

import java.util.List;
import java.util.Optional;

/** The one table of units. */
public final class Units {

    private static final String SI = "the gram and the millimetre themselves: SI Brochure, 9th edition, 2019";

    public static final Unit GRAM = new Unit("gram", "g", "gram", Kind.WEIGHT, Ratio.ONE, SI,
            List.of("g", "gram", "grams", "gramme", "grammes"));
    public static final Unit MILLIMETRE = new Unit("millimetre", "mm", "millimetre", Kind.DIAMETER, Ratio.ONE, SI,
            List.of("mm", "millimetre", "millimetres"));
    public static final Unit HOUR = new Unit("hour", "h", "clock hour", Kind.AXIS, Ratio.ONE,
            "common practice, no source", List.of("h", "hour", "hours"));

    private static final List<Unit> ALL = List.of(GRAM, MILLIMETRE, HOUR);

    private Units() { }

    public static List<Unit> all() {
        return ALL;
    }

    public static Optional<Unit> byId(String id) {
        return ALL.stream().filter(u -> u.id().equals(id)).findFirst();
    }
}
