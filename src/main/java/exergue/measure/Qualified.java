package exergue.measure;

import java.util.ArrayList;
import java.util.List;

/** The pieces of a reading without the sign that says how sure it is. */
record Qualified(List<Piece> pieces, Reading.Qualifier qualifier) {
    Qualified {
        pieces = List.copyOf(pieces);
    }


    static Step<Qualified> of(List<Piece> all, Task task) {
        List<Piece> pieces = new ArrayList<>(all);
        List<Reading.Qualifier> found = new ArrayList<>();
        while (!pieces.isEmpty() && "~<>".indexOf(pieces.get(0).shape()) >= 0) {
            found.add(switch (pieces.remove(0).shape()) {
                case '<' -> Reading.Qualifier.LESS_THAN;
                case '>' -> Reading.Qualifier.MORE_THAN;
                default -> Reading.Qualifier.ABOUT;
            });
        }
        for (int back = 1; back <= 2; back++) {
            int i = pieces.size() - back;
            if (i > 0 && pieces.get(i).shape() == '?' && (back == 1 || pieces.get(i + 1).shape() == 'U')) {
                pieces.remove(i);
                found.add(Reading.Qualifier.UNCERTAIN);
            }
        }
        if (found.size() > 1) {
            return task.stop(ReadingFault.TWO_QUALIFIERS, "The reading " + task.marks().quoted()
                    + " says in two ways how sure it is.", "Keep the one that matters most: c., <, > or ?.");
        }
        return Step.done(new Qualified(pieces, found.isEmpty() ? Reading.Qualifier.NONE : found.get(0)));
    }
}
