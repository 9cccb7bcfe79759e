package exergue.measure;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** A weight: one figure, or parts that add up, such as {@code 2 dwt 11 gr}. */
final class WeightGrammar {

    private static final Pattern PARTS = Pattern.compile("F|(FU)+");

    private WeightGrammar() { }

    static Step<Reading> read(Qualified text, Task task) {
        List<Piece> pieces = text.pieces();
        String shape = Piece.shape(pieces);
        if (!PARTS.matcher(shape).matches()) {
            return Misfit.explain(pieces, shape, task);
        }
        return Amounts.in(pieces, task).then(parts -> ordered(parts, pieces, task)).then(parts -> {
            Optional<BigDecimal> instrument = task.convention().weighing().resolution();
            BigDecimal sum = BigDecimal.ZERO;
            for (Quantity part : parts) {
                sum = sum.add(part.in(Units.GRAM).value());
            }
            Quantity finest = Amounts.normal(parts.get(parts.size() - 1), instrument);
            Quantity normal = new Quantity(sum, Units.GRAM, finest.resolution());
            return Step.done(new Reading.Read(Kind.WEIGHT, task.marks().written(), Reading.Form.SINGLE, parts,
                    List.of(normal), text.qualifier()));
        });
    }

    /** Parts come from one system, larger before smaller, and only the last may have a fraction. */
    private static Step<List<Quantity>> ordered(List<Quantity> parts, List<Piece> pieces, Task task) {
        for (int i = 0; i + 1 < parts.size(); i++) {
            Unit larger = parts.get(i).unit();
            Unit smaller = parts.get(i + 1).unit();
            boolean descends = larger.factor().times(BigDecimal.ONE).compareTo(smaller.factor().times(BigDecimal.ONE)) > 0;
            if (larger.system() != smaller.system() || !descends) {
                return task.stop(ReadingFault.PARTS_DO_NOT_ADD, pieces.get(2 * i).from(), pieces.get(2 * i + 3).to(),
                        "The parts in " + larger.plural() + " and in " + smaller.plural() + " do not make one weight.",
                        "Give parts of one system, the larger unit first, as in 2 dwt 11 gr; give a second weighing under also-measured.");
            }
            if (!((Piece.Figure) pieces.get(2 * i)).whole()) {
                return task.stop(ReadingFault.PARTS_DO_NOT_ADD, pieces.get(2 * i), "The part "
                        + task.quoted(pieces.get(2 * i)) + " has a fraction, though a smaller part follows it.",
                        "Only the last part of a weight can have a fraction, as in 2 dwt 11½ gr.");
            }
        }
        return Step.done(parts);
    }
}
