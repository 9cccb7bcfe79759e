package exergue.edition.methods.english;

import exergue.edition.methods.ComparisonTable;
import exergue.measure.Convention;
import exergue.measure.PrintForm;
import exergue.study.AxisAgreement;
import exergue.study.Differences;
import exergue.study.TwoHands;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says in one sentence how far two hands differ. */
public final class AgreementSentence {

    private AgreementSentence() { }

    /** For the methods statement, and for who asks for it on the command line. */
    public static String of(TwoHands pair, PrintForm form) {
        List<String> clauses = new ArrayList<>();
        pair.weight().ifPresent(d -> clauses.add("weights are " + onAverage(d.rounded(2), form, "g", "higher", "lower")));
        pair.diameter().ifPresent(d -> clauses.add("diameters " + directions(pair) + "are "
                + onAverage(d.rounded(1), form, "mm", "larger", "smaller")));
        axes(pair.axes()).ifPresent(clauses::add);
        if (clauses.isEmpty()) {
            return "Too few coins stand both in " + pair.first().title() + " and in " + pair.second().title()
                    + " to say how far the two agree.";
        }
        boolean limits = pair.weight().isPresent() || pair.diameter().isPresent();
        return "In " + pair.first().title() + ", compared with " + pair.second().title() + ", "
                + String.join("; ", clauses)
                + (limits ? "; the limits of agreement are those of Bland and Altman 1986." : ".");
    }

    private static String onAverage(Differences.Rounded found, PrintForm form, String unit, String more, String less) {
        String mean = found.mean().signum() == 0 ? "the same on average" : form.decimal(found.mean().abs())
                + Grammar.NO_BREAK + unit + " " + (found.mean().signum() > 0 ? more : less) + " on average";
        return mean + " (" + found.coins() + " coins, limits of agreement "
                + ComparisonTable.signed(found.lower(), form) + " to " + ComparisonTable.signed(found.upper(), form)
                + Grammar.NO_BREAK + unit + ")";
    }

    private static String directions(TwoHands pair) {
        return !pair.inDifferentDirections() ? ""
                : "(" + direction(pair.first()) + " against " + direction(pair.second()) + ") ";
    }

    private static String direction(Convention convention) {
        return convention.sizing().direction().word();
    }

    private static Optional<String> axes(AxisAgreement axes) {
        if (!axes.tells()) {
            return Optional.empty();
        }
        if (axes.equal() == axes.n()) {
            return Optional.of("all " + axes.n() + " axes are equal");
        }
        return Optional.of("of " + axes.n() + " axes " + number(axes.equal(), axes.n()) + " equal and "
                + number(axes.withinOneHour(), axes.n()) + " within one hour");
    }

    private static String number(int part, int all) {
        return part == all ? "all are" : part == 0 ? "none are" : part + (part == 1 ? " is" : " are");
    }
}
