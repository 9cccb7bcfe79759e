package exergue.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/** Puts digits and fractions together into figures: {@code 1 3/16}, {@code 1¾}, {@code 3,87}, {@code 6:30}. */
final class Figures {

    static final int MOST_DIGITS = 12;
    /** Most pieces of one figure: 1-3/16. */
    private static final int LONGEST = 5;
    private static final BigDecimal SIXTY = new BigDecimal("60");

    private Figures() { }

    static Step<List<Piece>> in(List<Piece> pieces, Task task) {
        List<Piece> folded = new ArrayList<>();
        int i = 0;
        while (i < pieces.size()) {
            int taken = taken(Piece.shape(pieces.subList(i, Math.min(i + LONGEST, pieces.size()))), pieces, i);
            if (taken == 0) {
                folded.add(pieces.get(i));
                i++;
                continue;
            }
            Step<Piece> figure = figure(pieces.subList(i, i + taken), task);
            if (figure instanceof Step.Stopped<Piece> stopped) {
                return new Step.Stopped<>(stopped.remark());
            }
            folded.add(((Step.Done<Piece>) figure).value());
            i += taken;
        }
        return Step.done(folded);
    }

    /** How many pieces from i on make one figure. A hyphen joins only a whole number and a proper fraction. */
    private static int taken(String shape, List<Piece> pieces, int i) {
        if (shape.startsWith("DD/D") || shape.startsWith("D-D/D") && proper(pieces, i + 2)) {
            return shape.startsWith("DD") ? 4 : 5;
        }
        if (shape.startsWith("D-G") || shape.startsWith("D/D")) {
            return 3;
        }
        if (shape.startsWith("DG")) {
            return 2;
        }
        return shape.startsWith("D") || shape.startsWith("G") ? 1 : 0;
    }

    private static boolean proper(List<Piece> pieces, int i) {
        String above = ((Piece.Digits) pieces.get(i)).text();
        String below = ((Piece.Digits) pieces.get(i + 2)).text();
        return plainWhole(above) && plainWhole(below) && new BigInteger(above).compareTo(new BigInteger(below)) < 0;
    }

    private static Step<Piece> figure(List<Piece> parts, Task task) {
        int from = parts.get(0).from();
        int to = parts.get(parts.size() - 1).to();
        int digits = 0;
        for (Piece part : parts) {
            digits += part instanceof Piece.Digits d ? (int) d.text().chars().filter(c -> c >= '0' && c <= '9').count() : 0;
        }
        if (digits > MOST_DIGITS) {
            return task.stop(ReadingFault.TOO_MANY_DIGITS, from, to, "The figure " + task.marks().quoted(from, to)
                    + " has " + digits + " digits; no instrument gives that many.", "Give the figure as the instrument showed it.");
        }
        if (parts.size() == 1 && parts.get(0) instanceof Piece.Digits single) {
            return single.text().contains(":") ? clock(single, task) : DecimalMarks.read(single, task);
        }
        return fraction(parts, from, to, task);
    }

    private static Step<Piece> fraction(List<Piece> parts, int from, int to, Task task) {
        Piece last = parts.get(parts.size() - 1);
        Piece above = last instanceof Piece.Glyph ? last : parts.get(parts.size() - 3);
        int before = parts.indexOf(above);
        for (Piece part : parts) {
            if (part instanceof Piece.Digits digits && !plainWhole(digits.text())) {
                return task.stop(ReadingFault.IMPOSSIBLE_FRACTION, from, to, "In " + task.marks().quoted(from, to)
                        + " a fraction and a decimal are mixed.", "Write either a common fraction, such as 1 3/16, or a decimal, such as 1.19.");
            }
        }
        BigDecimal numerator = last instanceof Piece.Glyph glyph ? BigDecimal.valueOf(glyph.numerator())
                : new BigDecimal(((Piece.Digits) above).text());
        BigDecimal denominator = last instanceof Piece.Glyph glyph ? BigDecimal.valueOf(glyph.denominator())
                : new BigDecimal(((Piece.Digits) last).text());
        if (denominator.signum() == 0 || numerator.signum() == 0 || numerator.compareTo(denominator) >= 0) {
            return task.stop(ReadingFault.IMPOSSIBLE_FRACTION, above.from(), to,
                    task.marks().quoted(above.from(), to) + " is not a fraction of one.",
                    "Write a fraction as in 11/16 or 1 3/16; write two directions as 18 x 17 and a range as 17-18.");
        }
        BigDecimal whole = before == 0 ? BigDecimal.ZERO : new BigDecimal(((Piece.Digits) parts.get(0)).text());
        Ratio part = new Ratio(BigDecimal.ONE, denominator);
        return Step.done(new Piece.Figure(part.times(whole.multiply(denominator).add(numerator)),
                part.times(BigDecimal.ONE), Piece.Figure.Form.FRACTION, from, to));
    }

    /** {@code 6:30}: hours and minutes of a clock face. Its step is as fine as its minutes are. */
    private static Step<Piece> clock(Piece.Digits text, Task task) {
        if (task.kind() != Kind.AXIS || !text.text().matches("[0-9]{1,2}:[0-5][0-9]")) {
            return task.stop(ReadingFault.NOT_A_READING, text, task.quoted(text) + " is not a figure.",
                    "Only a die-axis can be written like a time of day, with two figures for the minutes: 6:30.");
        }
        String[] halves = text.text().split(":");
        BigDecimal minutes = new BigDecimal(halves[1]);
        BigDecimal hours = new BigDecimal(halves[0]).add(minutes.divide(SIXTY, Ratio.CARRIED));
        String step = minutes.intValue() % 30 == 0 ? "30" : minutes.intValue() % 15 == 0 ? "15" : "1";
        return Step.done(new Piece.Figure(hours, new BigDecimal(step).divide(SIXTY, Ratio.CARRIED),
                Piece.Figure.Form.CLOCK, text.from(), text.to()));
    }

    private static boolean plainWhole(String digits) {
        return digits.matches("[0-9]+");
    }
}
