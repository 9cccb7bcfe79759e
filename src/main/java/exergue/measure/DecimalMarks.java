package exergue.measure;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/** Decides what a point or a comma among digits means. The convention says which is the decimal mark; nothing is guessed. */
final class DecimalMarks {

    private static final Pattern PERHAPS_MINUTES = Pattern.compile("[0-9]+[.,](15|30|45)");

    private DecimalMarks() { }

    static Step<Piece> read(Piece.Digits digits, Task task) {
        String text = digits.text();
        char ours = task.convention().decimalComma() ? ',' : '.';
        char other = ours == ',' ? '.' : ',';
        long marks = text.chars().filter(c -> c == '.' || c == ',').count();
        if (marks > 1) {
            return task.stop(ReadingFault.THOUSANDS_MARK, digits, "The figure " + task.quoted(digits)
                    + " has more than one point or comma.", "Write thousands without any mark, and one decimal mark at most: 1234.5.");
        }
        if (text.indexOf(other) >= 0) {
            return otherMark(digits, task, other, ours);
        }
        if (task.kind() == Kind.AXIS && PERHAPS_MINUTES.matcher(text).matches()) {
            return minutes(digits, task);
        }
        BigDecimal value = new BigDecimal(text.replace(ours, '.'));
        return Step.done(new Piece.Figure(value, BigDecimal.ONE.movePointLeft(value.scale()),
                value.scale() == 0 ? Piece.Figure.Form.WHOLE : Piece.Figure.Form.DECIMAL,
                digits.from(), digits.to()));
    }

    private static Step<Piece> otherMark(Piece.Digits digits, Task task, char other, char ours) {
        String asDecimal = digits.text().replace(other, ours);
        String mark = other == ',' ? "comma" : "point";
        String thousands = digits.text().replaceAll("[.,]", "");
        String figures = task.convention().equals(Convention.UNDECLARED) ? "where no convention is declared, figures"
                : "figures of “" + task.convention().title() + "”";
        if (digits.text().matches("[1-9][0-9]{0,2}[.,][0-9]{3}")) {
            return task.stop(ReadingFault.THOUSANDS_MARK, digits,
                    task.quoted(digits) + " can mean " + thousands + " or " + asDecimal + ".",
                    "Write " + thousands + " or " + asDecimal + ", whichever the record means.");
        }
        return task.stop(ReadingFault.OTHER_DECIMAL_MARK, digits, task.quoted(digits) + " has a decimal " + mark
                        + ", but " + figures + " are written with a decimal " + (ours == ',' ? "comma" : "point") + ".",
                "Write " + asDecimal + ", or say decimal-mark: " + mark + " in the convention if all its figures are written so.");
    }

    private static Step<Piece> minutes(Piece.Digits digits, Task task) {
        String[] halves = digits.text().split("[.,]");
        return task.stop(ReadingFault.HOURS_OR_MINUTES, digits, task.quoted(digits) + " can mean " + halves[0] + " hours "
                        + halves[1] + " minutes, or " + digits.text() + " hours as a decimal.",
                "Write " + halves[0] + ":" + halves[1] + " for minutes, or the decimal with another digit: "
                        + digits.text() + "0.");
    }
}
