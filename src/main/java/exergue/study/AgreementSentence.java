package exergue.study;

import exergue.measure.Convention;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says in one sentence, for the methods statement, how far two hands differ. */
final class AgreementSentence {

    private AgreementSentence() { }

    static String of(TwoHands pair) {
        List<String> clauses = new ArrayList<>();
        pair.weight().ifPresent(d -> clauses.add("weights are " + onAverage(d, 2, "g", "higher", "lower")));
        pair.diameter().ifPresent(d -> clauses.add("diameters " + directions(pair) + "are "
                + onAverage(d, 1, "mm", "larger", "smaller")));
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

    private static String onAverage(Differences d, int decimals, String unit, String more, String less) {
        String size = Figure.words(Math.abs(d.bias()), decimals);
        String mean = size.matches("0[.0]*") ? "the same on average"
                : size + " " + unit + " " + (d.bias() > 0 ? more : less) + " on average";
        return mean + " (" + d.n() + " coins, limits of agreement "
                + signed(d.lower(), decimals) + " to " + signed(d.upper(), decimals)
                + " " + unit + ")";
    }

    private static String directions(TwoHands pair) {
        return !pair.inDifferentDirections() ? ""
                : "(" + direction(pair.first()) + " against " + direction(pair.second()) + ") ";
    }

    private static String direction(Convention convention) {
        return convention.sizing().direction().word();
    }

    private static Optional<String> axes(AxisAgreement axes) {
        if (axes.n() < Differences.FEWEST) {
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

    private static String signed(double value, int decimals) {
        String words = Figure.words(value, decimals);
        return value > 0 && !words.matches("0[.0]*") ? "+" + words : words;
    }
}
