package exergue.measure;

import java.math.BigDecimal;
import java.util.Optional;

/** Conventions for tests, from a short hint: {@code gr=grains}, {@code unit=dwt}, {@code scale=head-1887}, {@code comma}. */
final class Hints {

    private Hints() { }

    static Convention convention(String hint) {
        String text = hint == null ? "" : hint;
        String value = text.substring(text.indexOf('=') + 1);
        Optional<Unit> unit = text.startsWith("unit=") ? Optional.of(Units.named(value).orElseThrow()) : Optional.empty();
        Optional<String> scale = text.startsWith("scale=") ? Optional.of(value) : Optional.empty();
        Optional<BigDecimal> step = text.startsWith("step=") ? Optional.of(new BigDecimal(value)) : Optional.empty();
        Convention.GrMeans gr = text.equals("gr=grains") ? Convention.GrMeans.GRAINS
                : text.equals("gr=grammes") ? Convention.GrMeans.GRAMMES : Convention.GrMeans.NOT_SAID;
        Convention.AxisNotation notation = switch (text) {
            case "hours" -> Convention.AxisNotation.HOURS;
            case "degrees" -> Convention.AxisNotation.DEGREES;
            default -> Convention.AxisNotation.NOT_SAID;
        };
        return new Convention("test", "a convention for tests", Optional.empty(), Optional.empty(), Optional.empty(),
                new Convention.Weighing(Optional.empty(), unit, gr, step),
                new Convention.Sizing(Optional.empty(), unit, Convention.Direction.NOT_SAID, scale, step),
                new Convention.Turning(notation, text.equals("anticlockwise"), Optional.empty()),
                text.equals("comma"), Optional.empty());
    }

    static Reading.Read read(Kind kind, String text, String hint) {
        Parsed parsed = ReadingParser.parse(kind, text, convention(hint));
        if (parsed instanceof Parsed.Accepted accepted && accepted.reading() instanceof Reading.Read read) {
            return read;
        }
        throw new AssertionError(text + " gave " + parsed);
    }

    static Remark refusal(Kind kind, String text, String hint) {
        Parsed parsed = ReadingParser.parse(kind, text, convention(hint));
        if (parsed instanceof Parsed.Refused refused) {
            return refused.remark();
        }
        throw new AssertionError(text + " gave " + parsed);
    }

    static String printed(Kind kind, String text, String hint) {
        return Printer.print(read(kind, text, hint), PrintForm.DEFAULT).text().replace('\u202F', ' ').replace('\u00A0', ' ');
    }
}
