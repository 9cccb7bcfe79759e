package exergue.measure;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** One figure, or a range ({@code 17-19 mm}); for a diameter also two directions ({@code 18 x 17 mm}) or a size. */
final class SpanGrammar {

    private static final Pattern SINGLE = Pattern.compile("FU?");
    private static final Pattern TWO_WAY = Pattern.compile("FU?×FU?");
    private static final Pattern RANGE = Pattern.compile("FU?-FU?");

    private SpanGrammar() { }

    static Step<Reading> read(Qualified text, Task task) {
        List<Piece> pieces = text.pieces();
        String shape = Piece.shape(pieces);
        if (task.kind() == Kind.DIAMETER && SizeGrammar.fits(pieces, shape, task)) {
            return SizeGrammar.read(text, task);
        }
        boolean twoWay = task.kind() == Kind.DIAMETER && TWO_WAY.matcher(shape).matches();
        boolean range = RANGE.matcher(shape).matches();
        if (!twoWay && !range && !SINGLE.matcher(shape).matches()) {
            return Misfit.explain(pieces, shape, task);
        }
        Reading.Form form = twoWay ? Reading.Form.TWO_WAY : range ? Reading.Form.RANGE : Reading.Form.SINGLE;
        return Amounts.in(pieces, task).then(recorded -> {
            Optional<BigDecimal> instrument = task.kind() == Kind.DIAMETER
                    ? task.convention().sizing().resolution() : Optional.empty();
            List<Quantity> normal = recorded.stream().map(quantity -> Amounts.normal(quantity, instrument)).toList();
            if (range && normal.get(0).value().compareTo(normal.get(1).value()) > 0) {
                return task.stop(ReadingFault.RANGE_BACKWARDS, "The range " + task.marks().quoted()
                        + " goes from the greater to the smaller.", "Write the smaller figure first, or an x between them "
                        + "if they are two directions.");
            }
            return Step.done(new Reading.Read(task.kind(), task.marks().written(), form, recorded, normal, text.qualifier()));
        });
    }
}
