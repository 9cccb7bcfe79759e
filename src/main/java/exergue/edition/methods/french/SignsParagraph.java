package exergue.edition.methods.french;

import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.SignInUse;
import exergue.edition.methods.Tally;
import java.util.List;

/** The signs in the measurement line, only those that occur. */
final class SignsParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        return SignInUse.passages("Dans les lignes de mesures,",
                SignInUse.of(tally).stream().map(SignsParagraph::clause).toList(), Grammar.SEMICOLON.stripTrailing());
    }

    private static String clause(SignInUse sign) {
        return words(sign) + (sign.figures() == 0 ? "" : " (" + Noun.FIGURE.count(sign.figures()) + ")");
    }

    private static String words(SignInUse sign) {
        String instead = sign.mark().isBlank() ? " est laissée en blanc" : " est remplacée par " + sign.mark();
        return switch (sign.meaning()) {
            case OTHER_HAND -> "une valeur qui ne vient pas de la source principale est suivie de " + sign.mark();
            case LEFT_OUT -> "un poids exclu des statistiques pondérales est suivi de " + sign.mark();
            case MISSING -> "une valeur inconnue" + instead;
            case ILLEGIBLE -> "une valeur consignée mais illisible" + instead;
            case NOT_APPLICABLE -> "une valeur qui ne peut exister" + instead;
            case ABOUT -> "une valeur que la source dit approximative est précédée de " + sign.mark();
            case LESS_THAN -> "une valeur que la source donne comme limite supérieure est précédée de <";
            case MORE_THAN -> "une valeur que la source donne comme limite inférieure est précédée de >";
            case UNCERTAIN -> "une valeur dont la source doute est suivie de ?";
        };
    }
}
