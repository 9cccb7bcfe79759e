package exergue.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says in one sentence, for the methods statement, how far two hands differ. */
final class AgreementSentence {

    private AgreementSentence() { }

    static String of(TwoHands pair) {
        List<String> clauses = new ArrayList<>();
        weights(pair).ifPresent(clauses::add);
        diameters(pair).ifPresent(clauses::add);
        axes(pair.axes()).ifPresent(clauses::add);
        String hands = "Between " + pair.first().title() + " and " + pair.second().title();
        return clauses.isEmpty() ? hands + " too few coins were read twice to say how far they agree."
                : hands + ", " + String.join("; ", clauses) + ".";
    }

    private static Optional<String> weights(TwoHands pair) {
        return pair.weight().map(d -> "weights of " + d.n() + " coins differ by " + signed(d.bias(), 2) + " g on average "
                + limits(d, 2, "g"));
    }

    private static Optional<String> diameters(TwoHands pair) {
        String directions = !pair.inDifferentDirections() ? "" : ", taken " + pair.first().sizing().direction().word()
                + " by the first and " + pair.second().sizing().direction().word() + " by the second,";
        return pair.diameter().map(d -> "diameters of " + d.n() + " coins" + directions + " differ by "
                + signed(d.bias(), 1) + " mm on average " + limits(d, 1, "mm"));
    }

    private static String limits(Differences d, int decimals, String unit) {
        return "(limits of agreement " + signed(d.lower(), decimals) + " to " + signed(d.upper(), decimals) + " " + unit
                + ", after Bland and Altman 1986)";
    }

    private static Optional<String> axes(AxisAgreement axes) {
        if (axes.n() < Differences.FEWEST) {
            return Optional.empty();
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
