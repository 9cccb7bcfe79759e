package exergue.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Figures with their units, as weights and lengths share them. */
final class Amounts {

    /** Grams or square millimetres. */
    private static final BigDecimal MOST = new BigDecimal("100000");
    private static final BigDecimal MOST_MILLIMETRES = new BigDecimal("1000");
    private static final BigDecimal LEAST = new BigDecimal("0.000001");

    private Amounts() { }

    /**
     * One quantity for each figure, in order.
     *
     * @param pieces figures, each followed by its unit word or by none
     */
    static Step<List<Quantity>> in(List<Piece> pieces, Task task) {
        List<Piece.UnitWord> words = pieces.stream().filter(Piece.UnitWord.class::isInstance)
                .map(Piece.UnitWord.class::cast).toList();
        List<Quantity> quantities = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            if (!(pieces.get(i) instanceof Piece.Figure figure)) {
                continue;
            }
            Piece.UnitWord word = i + 1 < pieces.size() && pieces.get(i + 1) instanceof Piece.UnitWord next ? next
                    : words.isEmpty() ? null : words.get(words.size() - 1);
            Step<Unit> unit = word == null ? bare(figure, task) : UnitWords.settle(word, figure, words, task);
            Step<Quantity> quantity = unit.then(u -> sound(figure, u, task));
            if (quantity instanceof Step.Stopped<Quantity> stopped) {
                return new Step.Stopped<>(stopped.remark());
            }
            quantities.add(((Step.Done<Quantity>) quantity).value());
        }
        return Step.done(quantities);
    }

    private static Step<Unit> bare(Piece.Figure figure, Task task) {
        return task.bareUnit().<Step<Unit>>map(Step::done).orElseGet(() -> noUnit(figure, task));
    }

    static <T> Step<T> noUnit(Piece.Figure figure, Task task) {
        String offer = switch (task.kind()) {
            case WEIGHT -> "g";
            case DIAMETER, THICKNESS -> "mm";
            case AXIS -> "h or °";
            case DENSITY -> "g/cm³";
            case SURFACE -> "mm²";
        };
        if (!task.kind().isUsual() && task.kind() != Kind.THICKNESS) {
            return task.stop(ReadingFault.NO_UNIT, figure, "The figure " + task.quoted(figure) + " has no unit.",
                    "Write the unit after the figure (" + offer + ").");
        }
        String key = task.kind() == Kind.AXIS ? "the notation of its axes" : "a unit for its " + (task.kind() == Kind.WEIGHT
                ? "weights" : "diameters");
        return task.stop(ReadingFault.NO_UNIT, figure, "The figure " + task.quoted(figure) + " has no unit, and "
                        + task.silent("name " + key) + ".",
                "Write the unit after the figure (" + offer + "), or name it in the convention.");
    }

    private static Step<Quantity> sound(Piece.Figure figure, Unit unit, Task task) {
        Quantity quantity = new Quantity(figure.value(), unit, figure.step());
        if (figure.value().signum() <= 0) {
            return task.stop(ReadingFault.NOT_POSITIVE, figure, "A " + task.kind().word() + " of nought is no measurement.",
                    "Write missing: and the reason if it was not measured.");
        }
        BigDecimal normal = quantity.in(Units.normal(unit.dimension())).value();
        BigDecimal most = unit.dimension() == Dimension.MASS || unit.dimension() == Dimension.AREA ? MOST : MOST_MILLIMETRES;
        if (normal.compareTo(most) > 0 || normal.compareTo(LEAST) < 0) {
            return task.stop(ReadingFault.BEYOND_ANY_COIN, figure, "No coin has a " + task.kind().word() + " of "
                    + task.quoted(figure) + " " + unit.plural() + ".", "Look for a slip in the figure or its unit.");
        }
        return Step.done(quantity);
    }

    /** The quantity in the normal unit of its dimension; its resolution never finer than the instrument's. */
    static Quantity normal(Quantity recorded, Optional<BigDecimal> instrument) {
        Quantity normal = recorded.in(Units.normal(recorded.unit().dimension()));
        BigDecimal resolution = instrument.map(normal.resolution()::max).orElse(normal.resolution());
        return new Quantity(normal.value(), normal.unit(), resolution);
    }
}
