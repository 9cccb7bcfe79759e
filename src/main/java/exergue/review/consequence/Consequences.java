package exergue.review.consequence;

import exergue.review.change.Changes;
import exergue.review.change.Consequence;
import exergue.review.differ.Differ;
import java.util.ArrayList;
import java.util.List;

/** Everything that follows from changes. */
public final class Consequences {

    private Consequences() { }

    /** @param changes with a remark on each move of how many numbers it changes by itself */
    public record Followed(Changes changes, List<Consequence> all) {
        public Followed {
            all = List.copyOf(all);
        }
    }

    /** In the order in which a reviewer wants to know: numbers, counts, means, dies, concordances, print. */
    public static Followed of(Differ.Side before, Differ.Side after, Changes changes) {
        TwoStates states = TwoStates.of(before, after, changes);
        List<Consequence> all = new ArrayList<>(Renumbering.of(states));
        all.addAll(Counts.of(states));
        all.addAll(Means.of(states));
        all.addAll(DieLinks.of(states));
        all.addAll(ConcordanceLines.of(states));
        all.addAll(Prints.of(states));
        return new Followed(Moves.remarked(states), all);
    }
}
