package exergue.study.die;

import exergue.finding.Code;
import exergue.finding.Severity;
import java.util.List;

/** What the dies of all coins together show to be wrong. */
public final class DieCodes {

    static final Code STATES_CONTRADICT = new Code("die-states-contradict", Severity.WARNING,
            "States of dies contradict each other",
            "A die that met one partner in an earlier state and another in a later one puts the two partners in order. Where two dies "
                    + "put theirs in opposite orders, a state or the name of a die is wrong, or a die was laid aside and taken up again. "
                    + "The chain is then printed in an order that its states do not bear out.",
            """
                    # of two coins, and of two others: {obverse: {die: O2, state: 1}, reverse: R2}, {obverse: {die: O2, state: 2}, reverse: R1}
                    dies: {obverse: {die: O1, state: 1}, reverse: R1}
                    dies: {obverse: {die: O1, state: 2}, reverse: R2}
                    """,
            """
                    # the two others: {obverse: {die: O2, state: 1}, reverse: R1}, {obverse: {die: O2, state: 2}, reverse: R2}
                    dies: {obverse: {die: O1, state: 1}, reverse: R1}
                    dies: {obverse: {die: O1, state: 2}, reverse: R2}
                    """);

    static final Code ACROSS_ISSUES = new Code("die-across-issues", Severity.NOTE,
            "One die struck coins of two mints or two denominations",
            "That happens, and where it does it matters: dies travelled, and gold and silver of one size were struck with one die. More "
                    + "often the numbers of dies begin anew with each mint or type, and two dies of one name are then counted as one.",
            """
                    # house-style.yaml says nothing of die-names; O1 is named by coins of two mints
                    dies: {obverse: O1, reverse: R1}
                    """,
            """
                    # house-style.yaml
                    die-names: by mint
                    """);

    private DieCodes() { }

    public static List<Code> all() {
        return List.of(STATES_CONTRADICT, ACROSS_ISSUES);
    }
}
