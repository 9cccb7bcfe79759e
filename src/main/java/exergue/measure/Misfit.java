package exergue.measure;

import java.util.List;

/** Says why the pieces of a text do not make a reading, as helpfully as can be. */
final class Misfit {

    private Misfit() { }

    static <T> Step<T> explain(List<Piece> pieces, String shape, Task task) {
        String kind = task.kind().one();
        if (shape.indexOf('F') < 0 && (shape.indexOf('A') < 0 || task.kind() != Kind.AXIS)) {
            return task.stop(ReadingFault.NOT_A_READING, "There is no figure in " + task.marks().quoted() + ".",
                    "Write a figure and its unit, " + UnitWords.known(task.kind())
                            + "; or missing: and the reason if there is no figure.");
        }
        if (shape.startsWith("-F") && task.kind() != Kind.AXIS) {
            return task.stop(ReadingFault.NOT_POSITIVE, "The " + task.kind().word() + " " + task.marks().quoted() + " is negative.",
                    "Take out the minus sign if it is a slip.");
        }
        int word = shape.indexOf('W');
        if (word >= 0) {
            return task.stop(ReadingFault.UNKNOWN_UNIT, pieces.get(word), task.quoted(pieces.get(word))
                    + " is not a unit known for " + kind + ".", "Use " + UnitWords.known(task.kind()) + ".");
        }
        if (shape.matches("FU?[×-]FU?")) {
            return task.stop(ReadingFault.ONE_FIGURE_ONLY, "The " + task.kind().word() + " of a coin is one figure, but " + task.marks().quoted()
                    + " gives two.", task.kind() == Kind.AXIS
                    ? "Write 5½ h for a reading midway between two hours, or 5 h? for the nearer one with a question mark."
                    : "Give one figure here; give a second measurement of the coin under also-measured.");
        }
        int side = shape.indexOf("FF");
        if (side >= 0) {
            return task.stop(ReadingFault.NOT_A_READING, pieces.get(side).from(), pieces.get(side + 1).to(),
                    "Two figures stand side by side in " + task.marks().quoted() + ".",
                    "Write thousands without a space; put an x between two directions, a hyphen in a range.");
        }
        return task.stop(ReadingFault.NOT_A_READING, "The text " + task.marks().quoted() + " cannot be read as " + kind + ".",
                "Write it as " + example(task.kind()) + ".");
    }

    private static String example(Kind kind) {
        return switch (kind) {
            case WEIGHT -> "3.87 g, 59.7 grains or 2 dwt 11 gr";
            case DIAMETER -> "18 mm, 18 x 17 mm, 17-19 mm or 11/16 in";
            case AXIS -> "6 h, 180° or ↓";
            case THICKNESS -> "2.1 mm or 2-3 mm";
            case DENSITY -> "13.78 g/cm³ or 14.103 g in air, 13.081 g in water, 20 °C";
            case SURFACE -> "254 mm²";
        };
    }
}
