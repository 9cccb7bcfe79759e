package exergue.check.rules;

import exergue.check.CoinOfType;
import exergue.check.Hand;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.measure.Kind;
import exergue.model.Catalogue;
import exergue.model.Making;
import exergue.model.Type;
import java.util.ArrayList;
import java.util.List;

/** None of the hands that measured a coin says anything of its weight, diameter or axis. */
public final class ReadingNotGiven implements Rule {

    static final Code CODE = new Code("reading-not-given", Severity.WARNING,
            "A coin has no weight, diameter or axis and does not say why",
            "A dash in the book should mean that somebody looked and knows why there is no figure. A reading "
                    + "that is simply left out cannot be told from one that was forgotten. An axis is not asked for on "
                    + "uniface and punched coins, where there is none, nor on cast and machine-struck ones, where it is "
                    + "given only if recorded (common practice, no source).",
            """
                    measured:
                      by: bench-2024
                      weight: 3.87 g
                      diameter: 18 mm
                    """,
            """
                    measured:
                      by: bench-2024
                      weight: 3.87 g
                      diameter: 18 mm
                      axis: "missing: not recorded"
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (CoinOfType each : CoinOfType.all(catalogue)) {
            List<Hand> hands = Hand.of(each.coin());
            for (Kind kind : wanted(each.type())) {
                boolean said = hands.stream().anyMatch(hand -> hand.measurement().mentions(kind));
                if (!said && !hands.isEmpty()) {
                    faults.add(fault(each, hands.get(0), kind));
                }
            }
        }
        return faults;
    }

    private static List<Kind> wanted(Type type) {
        boolean axisWanted = type.making().value() == Making.STRUCK && !type.uniface().value();
        return axisWanted ? List.of(Kind.WEIGHT, Kind.DIAMETER, Kind.AXIS) : List.of(Kind.WEIGHT, Kind.DIAMETER);
    }

    private static Finding fault(CoinOfType each, Hand main, Kind kind) {
        return Finding.of(CODE, main.measurement().by().place(), main.path() + "." + kind.word(),
                "The coin “" + each.coin().id() + "” has no " + kind.word() + " and does not say why.",
                "Add “" + kind.word() + "” to this measurement; if it is not known, write: " + kind.word()
                        + ": \"missing: \" and the reason, inside the quotation marks.");
    }
}
