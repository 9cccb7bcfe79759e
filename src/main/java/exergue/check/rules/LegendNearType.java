package exergue.check.rules;

import exergue.check.CoinOfType;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.legend.Apart;
import exergue.legend.Legend;
import exergue.model.Catalogue;
import exergue.model.Side;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The legend of a coin is one or two letters away from that of its type, and nothing says that the cutter left them out or
 * cut them by mistake. Legends that are further apart are meant to differ. Common practice, no source.
 */
public final class LegendNearType implements Rule {

    static final Code CODE = new Code("legend-near-type", Severity.WARNING,
            "The legend of a coin is almost, but not quite, that of its type",
            "A coin that gives its own legend usually shows how much of the type’s legend is left on it. A letter that is otherwise, "
                    + "also within brackets, is more often a slip of the keyboard than one of the die-cutter, and an index sorts it apart.",
            """
                    # the type has: legend: ΒΑΣΙΛΕΩΣ ΤΗΛΑΝΟΡΟΣ
                    obverse: {legend: "ΒΑΣΙΛΕΩΣ ΤΗΛ[ΑΝΩΡΟΣ]"}
                    """,
            """
                    obverse: {legend: "ΒΑΣΙΛΕΩΣ ΤΗΛ[ΑΝΟΡΟΣ]"}
                    """);

    private static final int FEWEST_LETTERS = 5;
    private static final int MOST_APART = 2;
    /** Of so many letters one may be otherwise before the legend is taken for another one. */
    private static final int LETTERS_FOR_ONE = 4;

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (CoinOfType pair : CoinOfType.all(catalogue)) {
            fault(pair.coin().obverse(), pair.type().obverse(), "obverse", pair).ifPresent(faults::add);
            fault(pair.coin().reverse(), pair.type().reverse(), "reverse", pair).ifPresent(faults::add);
        }
        return faults;
    }

    private static Optional<Finding> fault(Side own, Side type, String side, CoinOfType pair) {
        if (own.legend().isEmpty() || type.legend().isEmpty() || !isNear(own.legend().get().value(), type.legend().get().value())) {
            return Optional.empty();
        }
        Written<Legend> legend = own.legend().get();
        return Optional.of(Finding.of(CODE, legend.place(), side + ".legend", "The legend “" + legend + "” is almost that of the type “"
                + pair.type().id() + "”, “" + type.legend().get() + "”.",
                "Mend the letter if it is a slip. If the coin has it so, mark it: ⟨ ⟩ around a letter that the cutter left out, { } around "
                        + "one too many; or excuse it with the reason.")
                .withRelated(type.legend().get().place(), "the legend of the type"));
    }

    private static boolean isNear(Legend own, Legend type) {
        int letters = Math.min(own.sortKey().length(), type.sortKey().length());
        int apart = letters < FEWEST_LETTERS ? 0 : Apart.letters(own, type).orElse(0);
        return apart > 0 && apart <= MOST_APART && apart * LETTERS_FOR_ONE <= letters;
    }
}
