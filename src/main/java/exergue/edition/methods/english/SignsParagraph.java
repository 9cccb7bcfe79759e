package exergue.edition.methods.english;

import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.SignInUse;
import exergue.edition.methods.Tally;
import java.util.List;

/** The signs in the measurement line, only those that occur. */
final class SignsParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        return SignInUse.passages("In the measurement lines,",
                SignInUse.of(tally).stream().map(SignsParagraph::clause).toList(), ";");
    }

    private static String clause(SignInUse sign) {
        String count = sign.figures() == 0 ? "" : " (" + Grammar.count(sign.figures(), "figure") + ")";
        return words(sign) + count;
    }

    private static String words(SignInUse sign) {
        String instead = sign.mark().isBlank() ? " is left blank" : " is shown as " + sign.mark();
        return switch (sign.meaning()) {
            case OTHER_HAND -> "a figure that is not from the main source is followed by " + sign.mark();
            case LEFT_OUT -> "a weight that is left out of weight statistics is followed by " + sign.mark();
            case MISSING -> "a figure that is not known" + instead;
            case ILLEGIBLE -> "a figure that was recorded but cannot be read" + instead;
            case NOT_APPLICABLE -> "a figure that there cannot be" + instead;
            case ABOUT -> "a figure that the record calls approximate has " + sign.mark() + " before it";
            case LESS_THAN -> "a figure that the record gives as an upper limit has < before it";
            case MORE_THAN -> "a figure that the record gives as a lower limit has > before it";
            case UNCERTAIN -> "a figure that the record doubts has ? after it";
        };
    }
}
