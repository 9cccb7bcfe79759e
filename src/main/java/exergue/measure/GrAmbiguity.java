package exergue.measure;

import java.util.Optional;

/**
 * A weight in {@code gr} read both ways, for a caller that knows the type and can say which is the likelier.
 * Nothing here decides.
 */
public record GrAmbiguity(Reading.Read ifGrains, Reading.Read ifGrammes) {

    /** Both readings of a text that was refused because the convention does not say what {@code gr} means. */
    public static Optional<GrAmbiguity> in(String text, Convention convention) {
        if (!(ReadingParser.parse(Kind.WEIGHT, text, convention) instanceof Parsed.Refused refused)
                || refused.remark().fault() != ReadingFault.GR_NOT_SAID) {
            return Optional.empty();
        }
        return read(text, convention.withGr(Convention.GrMeans.GRAINS)).flatMap(grains ->
                read(text, convention.withGr(Convention.GrMeans.GRAMMES)).map(grammes ->
                        new GrAmbiguity(grains, grammes)));
    }

    private static Optional<Reading.Read> read(String text, Convention convention) {
        return ReadingParser.parse(Kind.WEIGHT, text, convention) instanceof Parsed.Accepted accepted
                && accepted.reading() instanceof Reading.Read read ? Optional.of(read) : Optional.empty();
    }

    /** "3.87 g if grammes, 0.25 g if grains". */
    static String offer(Piece.Figure figure) {
        return grams(figure, Units.GRAM) + " if grammes, " + grams(figure, Units.GRAIN) + " if grains";
    }

    private static String grams(Piece.Figure figure, Unit unit) {
        Quantity quantity = new Quantity(figure.value(), unit, figure.step()).in(Units.GRAM);
        return Printer.figure(Kind.WEIGHT, quantity, PrintForm.DEFAULT) + " g";
    }
}
