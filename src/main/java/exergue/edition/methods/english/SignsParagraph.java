package exergue.edition.methods.english;

import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.measure.Reading;
import exergue.model.HouseStyle;
import exergue.model.ReadingChoice.Status;
import java.util.ArrayList;
import java.util.List;

/** The signs in the measurement line, only those that occur. */
final class SignsParagraph implements MethodsParagraph {

    /** So many signs fit a sentence; more are a list. */
    private static final int FEW = 2;

    @Override
    public List<Passage> passages(Tally tally) {
        HouseStyle style = tally.style();
        List<String> signs = new ArrayList<>();
        if (tally.otherHand() > 0 && !style.signs().otherHand().isBlank()) {
            signs.add("a figure that is not from the main source is followed by " + style.signs().otherHand() + " ("
                    + Grammar.count(tally.otherHand(), "figure") + ")");
        }
        if (tally.damage().signUsed() && !style.signs().damaged().isBlank()) {
            signs.add("a weight that is left out of weight statistics is followed by " + style.signs().damaged());
        }
        absence(tally, Status.MISSING, style.missing(), "a figure that is not known", signs);
        absence(tally, Status.ILLEGIBLE, style.illegible(), "a figure that was recorded but cannot be read", signs);
        absence(tally, Status.NOT_APPLICABLE, style.notApplicable(), "a figure that there cannot be", signs);
        tally.qualified().forEach(qualified -> signs.add(qualifier(qualified)));
        return signs.size() > FEW ? List.of(listing(signs)) : Passage.of(signs.isEmpty() ? List.of()
                : List.of("In the measurement lines, " + String.join("; ", signs) + "."));
    }

    private static Passage listing(List<String> signs) {
        List<String> items = new ArrayList<>();
        signs.forEach(sign -> items.add(sign + (items.size() + 1 < signs.size() ? ";" : ".")));
        return new Passage.Listing("In the measurement lines,", items);
    }

    private static void absence(Tally tally, Status status, String mark, String what, List<String> signs) {
        if (tally.anyAbsent(status)) {
            signs.add(what + (mark.isBlank() ? " is left blank" : " is shown as " + mark));
        }
    }

    private static String qualifier(Tally.Count<Reading.Qualifier> qualified) {
        String sign = switch (qualified.thing()) {
            case ABOUT -> "a figure that the record calls approximate has c. before it";
            case LESS_THAN -> "a figure that the record gives as an upper limit has < before it";
            case MORE_THAN -> "a figure that the record gives as a lower limit has > before it";
            case UNCERTAIN -> "a figure that the record doubts has ? after it";
            case NONE -> "";
        };
        return sign + " (" + Grammar.count(qualified.times(), "figure") + ")";
    }
}
