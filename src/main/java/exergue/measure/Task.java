package exergue.measure;

import java.util.Optional;

/** What is to be read: the kind of reading, its text, and the convention it was recorded under. */
record Task(Kind kind, TextMarks marks, Convention convention) {

    <T> Step<T> stop(ReadingFault fault, Piece about, String what, String remedy) {
        return stop(fault, about.from(), about.to(), what, remedy);
    }

    <T> Step<T> stop(ReadingFault fault, int from, int to, String what, String remedy) {
        return new Step.Stopped<>(marks.remark(fault, from, to, what, remedy));
    }

    <T> Step<T> stop(ReadingFault fault, String what, String remedy) {
        return stop(fault, 0, marks.plain().length(), what, remedy);
    }

    String quoted(Piece piece) {
        return marks.quoted(piece.from(), piece.to());
    }

    /** "the convention “bench” does not say which", or that there is none that would. */
    String silent(String does) {
        return convention.equals(Convention.UNDECLARED) ? "no convention is declared that would " + does
                : "the convention “" + convention.title() + "” does not " + does;
    }

    /** The unit of a figure without one, if the convention names it. */
    Optional<Unit> bareUnit() {
        Optional<Unit> named = switch (kind) {
            case WEIGHT -> convention.weighing().unit();
            case DIAMETER, THICKNESS -> convention.sizing().unit();
            case DENSITY -> Optional.of(Units.GRAM_PER_CM3); // a specific gravity is a figure without a unit
            case SURFACE -> Optional.empty();
            case AXIS -> switch (convention.turning().notation()) {
                case HOURS -> Optional.of(Units.HOUR);
                case DEGREES -> Optional.of(Units.DEGREE);
                case ARROWS, NOT_SAID -> Optional.empty();
            };
        };
        return named.filter(unit -> unit.dimension() == kind.dimension());
    }
}
