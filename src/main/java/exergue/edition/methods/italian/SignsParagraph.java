package exergue.edition.methods.italian;

import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.SignInUse;
import exergue.edition.methods.Tally;
import java.util.List;

/** The signs in the measurement line, only those that occur. */
final class SignsParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        return SignInUse.passages("Nelle righe delle misure,",
                SignInUse.of(tally).stream().map(SignsParagraph::clause).toList(), ";");
    }

    private static String clause(SignInUse sign) {
        return words(sign) + (sign.figures() == 0 ? "" : " (" + Noun.FIGURE.count(sign.figures()) + ")");
    }

    private static String words(SignInUse sign) {
        String instead = sign.mark().isBlank() ? " è lasciato in bianco" : " è reso con " + sign.mark();
        return switch (sign.meaning()) {
            case OTHER_HAND -> "un valore che non proviene dalla fonte principale è seguito da " + sign.mark();
            case LEFT_OUT -> "un peso escluso dalle statistiche ponderali è seguito da " + sign.mark();
            case MISSING -> "un valore ignoto" + instead;
            case ILLEGIBLE -> "un valore registrato ma illeggibile" + instead;
            case NOT_APPLICABLE -> "un valore che non può esistere" + instead;
            case ABOUT -> "un valore che la fonte dice approssimativo è preceduto da " + sign.mark();
            case LESS_THAN -> "un valore che la fonte dà come limite superiore è preceduto da <";
            case MORE_THAN -> "un valore che la fonte dà come limite inferiore è preceduto da >";
            case UNCERTAIN -> "un valore di cui la fonte dubita è seguito da ?";
        };
    }
}
