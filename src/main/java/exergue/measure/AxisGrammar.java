package exergue.measure;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** A die-axis: clock hours, degrees, or an arrow; {@code ↑↓} is obverse and reverse, as French books draw it. */
final class AxisGrammar {

    private static final BigDecimal THIRTEEN = new BigDecimal("13");
    private static final BigDecimal FULL_CIRCLE = BigDecimal.valueOf(360);
    private static final Pattern ARROWS = Pattern.compile("A+");
    private static final Pattern FIGURE = Pattern.compile("-?FU?");

    private AxisGrammar() { }

    static Step<Reading> read(Qualified text, Task task) {
        List<Piece> pieces = text.pieces();
        String shape = Piece.shape(pieces);
        if (shape.equals("A")) {
            return arrow((Piece.Arrow) pieces.get(0), text, task);
        }
        if (shape.equals("AA") && ((Piece.Arrow) pieces.get(0)).eighths() == 0) {
            return arrow((Piece.Arrow) pieces.get(1), text, task);
        }
        if (ARROWS.matcher(shape).matches()) {
            return task.stop(ReadingFault.ARROWS_UNCLEAR, "The arrows " + task.marks().quoted() + " do not give one die-axis.",
                    "Draw the reverse alone (↓), or the obverse upright and then the reverse (↑↓).");
        }
        if (!FIGURE.matcher(shape).matches()) {
            return Misfit.explain(pieces, shape, task);
        }
        boolean negative = shape.startsWith("-");
        Piece.Figure figure = (Piece.Figure) pieces.get(negative ? 1 : 0);
        return unit(pieces, figure, task).then(unit -> figure(figure, unit, negative, task))
                .then(recorded -> Step.done(turned(recorded, task.convention().turning().anticlockwise(), text, task)));
    }

    private static Step<Reading> arrow(Piece.Arrow arrow, Qualified text, Task task) {
        Quantity recorded = new Quantity(BigDecimal.valueOf(arrow.eighths()), Units.ARROW, BigDecimal.ONE);
        return Step.done(turned(recorded, false, text, task));
    }

    private static Step<Unit> unit(List<Piece> pieces, Piece.Figure figure, Task task) {
        if (pieces.get(pieces.size() - 1) instanceof Piece.UnitWord word) {
            return UnitWords.settle(word, figure, List.of(word), task);
        }
        if (figure.form() == Piece.Figure.Form.CLOCK) {
            return Step.done(Units.HOUR);
        }
        return task.bareUnit().<Step<Unit>>map(Step::done).orElseGet(() -> Amounts.noUnit(figure, task));
    }

    private static boolean isInCircle(BigDecimal degrees) {
        return degrees.signum() > 0 && degrees.compareTo(FULL_CIRCLE) <= 0;
    }

    private static Step<Quantity> figure(Piece.Figure figure, Unit unit, boolean negative, Task task) {
        if (unit.equals(Units.HOUR) && (negative || figure.value().compareTo(THIRTEEN) >= 0)) {
            return task.stop(ReadingFault.HOUR_BEYOND_TWELVE, figure, "The clock face of a die-axis has no hour "
                    + (negative ? "below nought." : task.quoted(figure) + "."),
                    "Hours go from 1 to 12; " + (isInCircle(figure.value()) ? "if degrees are meant, write "
                            + figure.value().toPlainString() + "°." : "write degrees as in 330°."));
        }
        if (unit.equals(Units.DEGREE) && figure.form() == Piece.Figure.Form.CLOCK) {
            return task.stop(ReadingFault.NOT_A_READING, figure, task.quoted(figure) + " is a time of day, not degrees.",
                    "Write the axis as 6:30 or as 195°.");
        }
        BigDecimal value = negative ? figure.value().negate() : figure.value();
        return Step.done(new Quantity(value, unit, figure.step()));
    }

    /** An arrow shows where it points; only figures are counted in a direction. */
    private static Reading turned(Quantity recorded, boolean anticlockwise, Qualified text, Task task) {
        Optional<BigDecimal> instrument = task.convention().turning().resolution();
        Quantity hours = Amounts.normal(recorded, instrument);
        BigDecimal value = anticlockwise ? Axis.mirrored(hours.value()) : Axis.onClock(hours.value());
        return new Reading.Read(Kind.AXIS, task.marks().written(), Reading.Form.SINGLE, List.of(recorded),
                List.of(new Quantity(value, Units.HOUR, hours.resolution())), text.qualifier());
    }
}
