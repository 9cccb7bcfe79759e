package exergue.edition.methods.german;

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
        pair.weight().ifPresent(d -> clauses.add("ihre Gewichte sind im Mittel "
                + onAverage(d.rounded(2), form, "g", "höher", "niedriger")));
        pair.diameter().ifPresent(d -> clauses.add("ihre Durchmesser" + directions(pair) + " sind im Mittel "
                + onAverage(d.rounded(1), form, "mm", "größer", "kleiner")));
        axes(pair.axes()).ifPresent(clauses::add);
        if (clauses.isEmpty()) {
            return "Zu wenige Münzen haben Werte aus beiden Quellen (" + pair.first().title() + "; "
                    + pair.second().title() + "), als dass sich sagen ließe, wie weit diese übereinstimmen.";
        }
        if (pair.weight().isPresent() || pair.diameter().isPresent()) {
            clauses.add("die Übereinstimmungsgrenzen sind die von Bland und Altman 1986");
        }
        return "Die erste Quelle (" + pair.first().title() + ") wurde mit der zweiten (" + pair.second().title()
                + ") verglichen: " + String.join("; ", clauses) + ".";
    }

    private static String onAverage(Differences.Rounded found, PrintForm form, String unit, String more, String less) {
        int sign = found.mean().signum();
        String mean = sign == 0 ? "gleich" : "um " + form.decimal(found.mean().abs()) + Grammar.NO_BREAK + unit + " "
                + (sign > 0 ? more : less);
        return mean + " (" + Noun.COIN.count(found.coins()) + ", Übereinstimmungsgrenzen "
                + ComparisonTable.signed(found.lower(), form) + " bis " + ComparisonTable.signed(found.upper(), form)
                + Grammar.NO_BREAK + unit + ")";
    }

    private static String directions(TwoHands pair) {
        return !pair.inDifferentDirections() ? "" : " (gemessen " + HowMeasured.line(pair.first().sizing().direction())
                + ", die der zweiten " + HowMeasured.line(pair.second().sizing().direction()) + ")";
    }

    private static Optional<String> axes(AxisAgreement axes) {
        if (!axes.tells()) {
            return Optional.empty();
        }
        String all = Grammar.NUMBERS.of(axes.n());
        if (axes.equal() == axes.n()) {
            return Optional.of("alle " + all + " Stempelstellungen sind gleich");
        }
        String equal = axes.equal() == 0 ? "ist keine" : axes.equal() == 1 ? "ist eine"
                : "sind " + Grammar.NUMBERS.of(axes.equal());
        String within = axes.withinOneHour() == axes.n() ? "bei allen" : axes.withinOneHour() == 0 ? "bei keiner"
                : axes.withinOneHour() == 1 ? "bei einer" : "bei " + Grammar.NUMBERS.of(axes.withinOneHour());
        return Optional.of("von " + all + " Stempelstellungen " + equal + " gleich, und " + within
                + " beträgt der Unterschied höchstens eine Stunde");
    }
}
