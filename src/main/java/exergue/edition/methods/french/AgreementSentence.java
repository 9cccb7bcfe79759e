package exergue.edition.methods.french;

import exergue.edition.methods.ComparisonTable;
import exergue.measure.PrintForm;
import exergue.study.AxisAgreement;
import exergue.study.Differences;
import exergue.study.TwoHands;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says in one sentence how far two hands differ. */
final class AgreementSentence {

    private AgreementSentence() { }

    static String of(TwoHands pair, PrintForm form) {
        List<String> clauses = new ArrayList<>();
        pair.weight().ifPresent(d -> clauses.add("ses poids sont en moyenne "
                + onAverage(d.rounded(2), form, "g")));
        pair.diameter().ifPresent(d -> clauses.add("ses diamètres" + directions(pair) + " sont en moyenne "
                + onAverage(d.rounded(1), form, "mm")));
        axes(pair.axes()).ifPresent(clauses::add);
        if (clauses.isEmpty()) {
            return "Trop peu de monnaies ont été mesurées par les deux sources (" + pair.first().title()
                    + Grammar.SEMICOLON + pair.second().title() + ") pour dire dans quelle mesure elles concordent.";
        }
        if (pair.weight().isPresent() || pair.diameter().isPresent()) {
            clauses.add("les limites de concordance sont celles de Bland et Altman 1986");
        }
        return "La première source (" + pair.first().title() + ") a été comparée à la seconde (" + pair.second().title()
                + ")" + Grammar.COLON + String.join(Grammar.SEMICOLON, clauses) + ".";
    }

    private static String onAverage(Differences.Rounded found, PrintForm form, String unit) {
        int sign = found.mean().signum();
        String mean = sign == 0 ? "identiques" : (sign > 0 ? "supérieurs de " : "inférieurs de ")
                + form.decimal(found.mean().abs()) + Grammar.NO_BREAK + unit;
        return mean + " (" + Noun.COIN.count(found.coins()) + ", limites de concordance de "
                + ComparisonTable.signed(found.lower(), form) + " à " + ComparisonTable.signed(found.upper(), form)
                + Grammar.NO_BREAK + unit + ")";
    }

    private static String directions(TwoHands pair) {
        return !pair.inDifferentDirections() ? "" : " (pris" + HowMeasured.along(pair.first().sizing().direction())
                + ", ceux de la seconde" + HowMeasured.along(pair.second().sizing().direction()) + ")";
    }

    private static Optional<String> axes(AxisAgreement axes) {
        if (!axes.tells()) {
            return Optional.empty();
        }
        String all = Grammar.NUMBERS.of(axes.n());
        if (axes.equal() == axes.n()) {
            return Optional.of("les " + all + " axes sont égaux");
        }
        String equal = axes.equal() == 0 ? "aucun n’est égal" : axes.equal() == 1 ? "un seul est égal"
                : Grammar.NUMBERS.of(axes.equal()) + " sont égaux";
        String within = axes.withinOneHour() == axes.n() ? "tous concordent"
                : axes.withinOneHour() == 0 ? "aucun ne concorde" : axes.withinOneHour() == 1 ? "un seul concorde"
                : Grammar.NUMBERS.of(axes.withinOneHour()) + " concordent";
        return Optional.of("sur " + all + " axes, " + equal + " et " + within + " à une heure près");
    }
}
