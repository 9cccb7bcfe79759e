package exergue.edition.methods.english;

import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Tally;
import exergue.measure.Reading;
import exergue.model.HouseStyle;
import exergue.model.ReadingChoice.Status;
import java.util.ArrayList;
import java.util.List;

/** The signs in the measurement line, only those that occur. */
final class SignsParagraph implements MethodsParagraph {

    @Override
    public List<String> sentences(Tally tally) {
        HouseStyle style = tally.style();
        List<String> signs = new ArrayList<>();
        if (tally.otherHand() > 0 && !style.signs().otherHand().isBlank()) {
            signs.add(style.signs().otherHand() + " follows a figure that is not from the main source ("
                    + Grammar.count(tally.otherHand(), "figure") + ")");
        }
        if (tally.damage().signUsed() && !style.signs().damaged().isBlank()) {
            signs.add(style.signs().damaged() + " follows a weight that is left out of weight statistics");
        }
        absence(tally, Status.MISSING, style.missing(), "a figure that is not known", signs);
        absence(tally, Status.ILLEGIBLE, style.illegible(), "a figure that was recorded but cannot be read", signs);
        absence(tally, Status.NOT_APPLICABLE, style.notApplicable(), "a figure that there cannot be", signs);
        tally.qualified().forEach(qualified -> signs.add(qualifier(qualified)));
        return signs.isEmpty() ? List.of() : List.of("In the figures, " + String.join("; ", signs) + ".");
    }

    private static void absence(Tally tally, Status status, String mark, String what, List<String> signs) {
        if (tally.anyAbsent(status)) {
            signs.add((mark.isBlank() ? "a blank" : mark) + " stands for " + what);
        }
    }

    private static String qualifier(Tally.Count<Reading.Qualifier> qualified) {
        String sign = switch (qualified.thing()) {
            case ABOUT -> "c. goes before a figure that the record calls approximate";
            case LESS_THAN -> "< goes before a figure that the record gives as an upper limit";
            case MORE_THAN -> "> goes before a figure that the record gives as a lower limit";
            case UNCERTAIN -> "? follows a figure that the record doubts";
            case NONE -> "";
        };
        return sign + " (" + Grammar.count(qualified.times(), "figure") + ")";
    }
}
