package exergue.measure;

import java.util.List;
import java.util.Optional;

/**
 * Text to reading, or the reason why not. Never throws, whatever the text.
 *
 * <p>The way of a text: {@link TextMarks} makes its signs uniform, {@link Absence} looks for a reason instead of a
 * figure, {@link Pieces} cuts it, {@link Figures} and {@link UnitWords} put figures and units together,
 * {@link Qualified} takes off {@code c.} and {@code ?}, and the grammar of its kind reads what is left. The first that
 * stops has the word.
 */
public final class ReadingParser {

    private static final int LONGEST = 400;

    private ReadingParser() { }

    /** @param text as it stands in the entry; nothing needs to be trimmed or cleaned first */
    public static Parsed parse(Kind kind, String text, Convention convention) {
        String written = text == null ? "" : text;
        int length = written.codePointCount(0, written.length());
        if (length > LONGEST) { // before anything looks at every character of it
            return new Parsed.Refused(new Remark(ReadingFault.TOO_LONG, 0, length, "This " + kind.word() + " has " + length
                    + " characters; no more than " + LONGEST + " are read.", "Move what is not the reading itself to the note of the coin."));
        }
        Task task = new Task(kind, TextMarks.of(written), convention);
        Step<Reading> step = read(task);
        if (step instanceof Step.Stopped<Reading> stopped) {
            return new Parsed.Refused(stopped.remark());
        }
        Reading reading = ((Step.Done<Reading>) step).value();
        return new Parsed.Accepted(reading, reading instanceof Reading.Read read ? Notes.on(read, task) : List.of());
    }

    private static Step<Reading> read(Task task) {
        TextMarks marks = task.marks();
        if (marks.plain().isBlank()) {
            return task.stop(ReadingFault.EMPTY_READING, "The " + task.kind().word() + " is empty.",
                    "Write the figure with its unit; if there is none, write \"missing: why\", within quotation marks.");
        }
        Optional<Step<Reading>> absence = Absence.read(task);
        if (absence.isPresent()) {
            return absence.get();
        }
        if (task.kind() == Kind.DENSITY && WeighedInWater.fits(task)) {
            return WeighedInWater.read(task);
        }
        return Pieces.of(task)
                .then(pieces -> Figures.in(pieces, task))
                .then(pieces -> Qualified.of(UnitWords.in(pieces), task))
                .then(text -> switch (task.kind()) {
                    case WEIGHT -> WeightGrammar.read(text, task);
                    case DIAMETER, THICKNESS, DENSITY, SURFACE -> SpanGrammar.read(text, task);
                    case AXIS -> AxisGrammar.read(text, task);
                });
    }
}
