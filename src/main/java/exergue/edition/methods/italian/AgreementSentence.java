package exergue.edition.methods.italian;

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
        pair.weight().ifPresent(d -> clauses.add("i suoi pesi sono in media " + onAverage(d.rounded(2), form, "g")));
        pair.diameter().ifPresent(d -> clauses.add("i suoi diametri" + directions(pair) + " sono in media "
                + onAverage(d.rounded(1), form, "mm")));
        axes(pair.axes()).ifPresent(clauses::add);
        if (clauses.isEmpty()) {
            return "Troppo poche monete sono state misurate da entrambe le fonti (" + pair.first().title() + "; "
                    + pair.second().title() + ") per dire in che misura esse concordino.";
        }
        if (pair.weight().isPresent() || pair.diameter().isPresent()) {
            clauses.add("i limiti di concordanza sono quelli di Bland e Altman 1986");
        }
        return "La prima fonte (" + pair.first().title() + ") è stata confrontata con la seconda ("
                + pair.second().title() + "): " + String.join("; ", clauses) + ".";
    }

    private static String onAverage(Differences.Rounded found, PrintForm form, String unit) {
        int sign = found.mean().signum();
        String mean = sign == 0 ? "uguali" : (sign > 0 ? "superiori di " : "inferiori di ")
                + form.decimal(found.mean().abs()) + Grammar.NO_BREAK + unit;
        return mean + " (" + Noun.COIN.count(found.coins()) + ", limiti di concordanza da "
                + ComparisonTable.signed(found.lower(), form) + " a " + ComparisonTable.signed(found.upper(), form)
                + Grammar.NO_BREAK + unit + ")";
    }

    private static String directions(TwoHands pair) {
        return !pair.inDifferentDirections() ? "" : " (misurati" + HowMeasured.along(pair.first().sizing().direction())
                + ", quelli della seconda" + HowMeasured.along(pair.second().sizing().direction()) + ")";
    }

    private static Optional<String> axes(AxisAgreement axes) {
        if (!axes.tells()) {
            return Optional.empty();
        }
        String all = Grammar.NUMBERS.of(axes.n());
        if (axes.equal() == axes.n()) {
            return Optional.of((Grammar.NUMBERS.inWords(axes.n()) ? "tutti e " + all + " gli" : "tutti i " + all)
                    + " assi sono uguali");
        }
        String equal = axes.equal() == 0 ? "nessuno è uguale" : axes.equal() == 1 ? "uno solo è uguale"
                : Grammar.NUMBERS.of(axes.equal()) + " sono uguali";
        String within = axes.withinOneHour() == axes.n() ? "tutti concordano"
                : axes.withinOneHour() == 0 ? "nessuno concorda" : axes.withinOneHour() == 1 ? "uno solo concorda"
                : Grammar.NUMBERS.of(axes.withinOneHour()) + " concordano";
        return Optional.of("su " + all + " assi, " + equal + " e " + within + " entro un’ora");
    }
}
