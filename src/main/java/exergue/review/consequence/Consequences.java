package exergue.review.consequence;

import exergue.model.Catalogue;
import exergue.review.change.Changes;
import exergue.review.change.Consequence;
import java.util.ArrayList;
import java.util.List;

/** Everything that follows from changes. */
public final class Consequences {

    private Consequences() { }

    /** In the order in which a reviewer wants to know: numbers, counts, means, dies, concordances, print. */
    public static List<Consequence> of(Catalogue before, Catalogue after, Changes changes) {
        TwoStates states = TwoStates.of(before, after, changes);
        List<Consequence> all = new ArrayList<>(Renumbering.of(states));
        all.addAll(Counts.of(states));
        all.addAll(Means.of(states));
        all.addAll(DieLinks.of(states));
        all.addAll(ConcordanceLines.of(states));
        all.addAll(Prints.of(states));
        return List.copyOf(all);
    }

    /** The same changes, with a remark on each move of how many numbers it changes by itself. */
    public static Changes withMoves(Catalogue before, Catalogue after, Changes changes) {
        return Moves.remarked(TwoStates.of(before, after, changes));
    }
}
