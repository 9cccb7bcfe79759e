package exergue.measure;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** A diameter given as a number of a printed scale: {@code size 5}, {@code no. 5}, {@code Mionnet 5}. */
final class SizeGrammar {

    private static final Set<String> WORDS = Set.of("size", "no", "nr", "№", "number", "mionnet", "mionnet's", "scale");
    private static final Pattern NAMED = Pattern.compile("W{1,3}F");

    private SizeGrammar() { }

    /** True for a number of a scale, by its words or because the convention counts in sizes and names no unit. */
    static boolean fits(List<Piece> pieces, String shape, Task task) {
        if (shape.equals("F")) {
            return task.convention().sizing().printing().isPresent() && task.bareUnit().isEmpty();
        }
        return NAMED.matcher(shape).matches() && pieces.stream()
                .allMatch(piece -> piece instanceof Piece.Figure || piece instanceof Piece.Word word && WORDS.contains(word.text()));
    }

    static Step<Reading> read(Qualified text, Task task) {
        Piece.Figure figure = (Piece.Figure) text.pieces().get(text.pieces().size() - 1);
        Optional<String> printing = task.convention().sizing().printing();
        if (printing.isEmpty()) {
            boolean mionnet = text.pieces().stream().anyMatch(p -> p instanceof Piece.Word w && w.text().startsWith("mionnet"));
            if (!mionnet && task.bareUnit().equals(Optional.of(Units.SIXTEENTH))) {
                return sixteenths(figure, text, task);
            }
            return task.stop(ReadingFault.NO_SIZE_SCALE, "The size " + task.quoted(figure)
                            + " belongs to a printed scale, and its printings differ by up to "
                            + "17 mm; " + task.silent("name one") + ".",
                    "Say size-scale: in the convention, with one of " + SizeScale.ids() + ".");
        }
        return SizeScale.byId(printing.get()).map(scale -> looked(figure, scale, text, task))
                .orElseGet(() -> task.stop(ReadingFault.NO_SIZE_SCALE, "The size scale “" + printing.get()
                        + "” of the convention is not known.", "Name one of " + SizeScale.ids() + "."));
    }

    private static Step<Reading> sixteenths(Piece.Figure figure, Qualified text, Task task) {
        return Amounts.in(List.of(figure), task).then(recorded -> Step.done(new Reading.Read(Kind.DIAMETER,
                task.marks().written(), Reading.Form.SINGLE, recorded,
                List.of(Amounts.normal(recorded.get(0), task.convention().sizing().resolution())), text.qualifier())));
    }

    private static Step<Reading> looked(Piece.Figure figure, SizeScale scale, Qualified text, Task task) {
        Optional<Unit> size = figure.whole() ? scale.size(figure.value()) : Optional.empty();
        if (size.isEmpty()) {
            return task.stop(ReadingFault.SIZE_NOT_IN_TABLE, figure, scale.title() + " has no size "
                    + task.quoted(figure) + "; nothing is put between or beyond its sizes.",
                    "Its nearest are " + scale.around(figure.value()) + ". Give the diameter in mm if the record allows it.");
        }
        Unit unit = size.get();
        Quantity recorded = new Quantity(BigDecimal.ONE, unit,
                SizeScale.GOOD_TO.divide(unit.factor().numerator(), Ratio.CARRIED));
        BigDecimal resolution = task.convention().sizing().resolution().map(SizeScale.GOOD_TO::max).orElse(SizeScale.GOOD_TO);
        Quantity normal = new Quantity(unit.factor().times(BigDecimal.ONE), Units.MILLIMETRE, resolution);
        return Step.done(new Reading.Read(Kind.DIAMETER, task.marks().written(), Reading.Form.SINGLE,
                List.of(recorded), List.of(normal), text.qualifier()));
    }
}
