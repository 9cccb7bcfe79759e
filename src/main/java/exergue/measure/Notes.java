package exergue.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the reader should know of a reading that was accepted. */
final class Notes {

    private static final BigDecimal CIRCLE = new BigDecimal("360");
    private static final BigDecimal HALF = new BigDecimal("0.5");
    private static final BigDecimal HEAVY = new BigDecimal("1000");
    private static final BigDecimal LIGHT = new BigDecimal("0.01");
    private static final BigDecimal WIDE = new BigDecimal("150");
    private static final BigDecimal THIN = new BigDecimal("0.1");
    private static final BigDecimal BROAD = new BigDecimal("20000");
    /** No coin metal is lighter than aluminium at 2.7 g/cm³ or, platinum apart, denser than gold at 19.3. */
    private static final BigDecimal LIGHT_METAL = new BigDecimal("2");
    private static final BigDecimal DENSE = new BigDecimal("22");

    private Notes() { }

    static List<Remark> on(Reading.Read read, Task task) {
        List<Remark> notes = new ArrayList<>();
        if (read.kind() == Kind.AXIS) {
            circle(read, task, notes);
            midway(read, task, notes);
        } else {
            size(read, task, notes);
            if (!read.weighedInWater()) {
                instrument(read, task, notes);
            }
        }
        return notes;
    }

    private static void circle(Reading.Read read, Task task, List<Remark> notes) {
        Quantity recorded = read.asRecorded().get(0);
        boolean outside = recorded.value().signum() < 0 || recorded.value().compareTo(CIRCLE) > 0;
        if (recorded.unit().equals(Units.DEGREE) && outside) {
            notes.add(note(ReadingFault.DEGREES_NORMALISED, task, "The axis " + task.marks().quoted()
                            + " lies outside the circle of 0° to 360° and is taken as " + hours(read) + " h.",
                    "Nothing need be done if that is what the source means."));
        }
    }

    /** Whoever reads axes to the half hour means a half hour; from anyone else it is a reading between two. */
    private static void midway(Reading.Read read, Task task, List<Remark> notes) {
        boolean readsHalves = task.convention().turning().resolution().filter(step -> step.compareTo(HALF) <= 0).isPresent();
        if (Axis.midway(read.first().value()) && !readsHalves) {
            notes.add(note(ReadingFault.AXIS_MIDWAY, task, "The axis " + task.marks().quoted()
                            + " lies midway between two hours; it is kept and printed as " + hours(read) + " h.",
                    "Write the nearer hour if the coin shows which it is."));
        }
    }

    private static String hours(Reading.Read read) {
        return Printer.figure(Kind.AXIS, read.first(), PrintForm.DEFAULT);
    }

    private static void size(Reading.Read read, Task task, List<Remark> notes) {
        BigDecimal most = switch (read.kind()) {
            case WEIGHT -> HEAVY;
            case DENSITY -> DENSE;
            case SURFACE -> BROAD;
            default -> WIDE;
        };
        BigDecimal least = switch (read.kind()) {
            case WEIGHT -> LIGHT;
            case THICKNESS -> THIN;
            case DENSITY -> LIGHT_METAL;
            default -> BigDecimal.ONE;
        };
        for (Quantity normal : read.normal()) {
            if (normal.value().compareTo(most) > 0 || normal.value().compareTo(least) < 0) {
                notes.add(note(ReadingFault.UNUSUAL_FOR_A_COIN, task, "A " + read.kind().word() + " of "
                                + Printer.figure(read.kind(), normal, PrintForm.DEFAULT) + " " + normal.unit().symbol()
                                + " would be very unusual for a coin: " + task.marks().quoted() + ".",
                        "Look for a missing decimal mark or a wrong unit; nothing need be done if it is right."));
                return;
            }
        }
    }

    /** Worth a word only where a whole decimal more is given than the instrument shows. */
    private static void instrument(Reading.Read read, Task task, List<Remark> notes) {
        Optional<BigDecimal> instrument = switch (read.kind()) {
            case WEIGHT -> task.convention().weighing().resolution();
            case DIAMETER -> task.convention().sizing().resolution();
            case THICKNESS, AXIS, DENSITY, SURFACE -> Optional.empty();
        };
        Quantity last = read.asRecorded().get(read.asRecorded().size() - 1);
        BigDecimal shown = last.in(Units.normal(last.unit().dimension())).resolution();
        if (instrument.isPresent() && shown.movePointRight(1).compareTo(instrument.get()) <= 0) {
            notes.add(note(ReadingFault.FINER_THAN_INSTRUMENT, task, task.marks().quoted() + " is finer than the "
                            + instrument.get().toPlainString() + " " + read.first().unit().symbol() + " that the convention “"
                            + task.convention().title() + "” gives as its instrument’s step; it is printed to that step.",
                    "Look for a decimal mark in the wrong place; correct the step in the convention if the instrument shows more."));
        }
    }

    private static Remark note(ReadingFault fault, Task task, String what, String remedy) {
        return task.marks().remark(fault, 0, task.marks().plain().length(), what, remedy);
    }
}
