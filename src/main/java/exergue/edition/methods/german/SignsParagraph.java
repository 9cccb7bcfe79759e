package exergue.edition.methods.german;

import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.SignInUse;
import exergue.edition.methods.Tally;
import java.util.List;

/** The signs in the measurement line, only those that occur. */
final class SignsParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        return SignInUse.passages("In den Messzeilen gilt:",
                SignInUse.of(tally).stream().map(SignsParagraph::clause).toList(), ";");
    }

    private static String clause(SignInUse sign) {
        return words(sign) + (sign.figures() == 0 ? "" : " (" + Noun.FIGURE.count(sign.figures()) + ")");
    }

    private static String words(SignInUse sign) {
        String instead = sign.mark().isBlank() ? " bleibt leer" : " erscheint als " + sign.mark();
        return switch (sign.meaning()) {
            case OTHER_HAND -> "nach einem Wert, der nicht aus der Hauptquelle stammt, steht " + sign.mark();
            case LEFT_OUT -> "nach einem Gewicht, das in der Gewichtsstatistik nicht zählt, steht " + sign.mark();
            case MISSING -> "ein unbekannter Wert" + instead;
            case ILLEGIBLE -> "ein überlieferter, aber nicht lesbarer Wert" + instead;
            case NOT_APPLICABLE -> "ein Wert, den es nicht geben kann," + instead;
            case ABOUT -> "vor einem Wert, den die Quelle als ungefähr bezeichnet, steht " + sign.mark();
            case LESS_THAN -> "vor einem Wert, den die Quelle als obere Grenze nennt, steht <";
            case MORE_THAN -> "vor einem Wert, den die Quelle als untere Grenze nennt, steht >";
            case UNCERTAIN -> "nach einem Wert, den die Quelle bezweifelt, steht ?";
        };
    }
}
