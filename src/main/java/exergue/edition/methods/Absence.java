package exergue.edition.methods;

import exergue.measure.Kind;
import exergue.model.Making;
import exergue.model.ReadingChoice.Chosen;
import exergue.model.ReadingChoice.Status;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Figures of one kind that are not printed because there are none.
 *
 * @param status  missing, not applicable or illegible
 * @param reasons the commonest first
 */
public record Absence(Kind kind, Status status, int coins, List<Tally.Count<Reason>> reasons) {
    public Absence {
        reasons = List.copyOf(reasons);
    }


    /** Where a reason comes from: the entry's words, or what is known of the type where the entry is silent. */
    public enum Cause { SAID, UNIFACE, PUNCHED, NOT_SAID }

    /** @param words as the entry has them; empty unless the cause is that they are said */
    public record Reason(Cause cause, String words) { }

    static List<Absence> of(List<Counted> coins, List<Kind> kinds) {
        List<Absence> absences = new ArrayList<>();
        for (Status status : List.of(Status.MISSING, Status.NOT_APPLICABLE, Status.ILLEGIBLE)) {
            for (Kind kind : kinds) {
                Counts<Reason> reasons = new Counts<>(Comparator.comparing(Reason::cause)
                        .thenComparing(Reason::words));
                List<Counted> absent = coins.stream().filter(c -> c.chosen().get(kind).status() == status).toList();
                absent.forEach(coin -> reasons.add(reason(coin, coin.chosen().get(kind))));
                if (!absent.isEmpty()) {
                    absences.add(new Absence(kind, status, absent.size(), reasons.commonestFirst()));
                }
            }
        }
        return List.copyOf(absences);
    }

    private static Reason reason(Counted coin, Chosen chosen) {
        if (chosen.why().isPresent()) {
            return new Reason(Cause.SAID, chosen.why().get());
        }
        if (chosen.status() == Status.NOT_APPLICABLE && chosen.kind() == Kind.AXIS) {
            if (coin.type().uniface().value()) {
                return new Reason(Cause.UNIFACE, "");
            }
            if (coin.type().making().value() == Making.PUNCHED) {
                return new Reason(Cause.PUNCHED, "");
            }
        }
        return new Reason(Cause.NOT_SAID, "");
    }
}
