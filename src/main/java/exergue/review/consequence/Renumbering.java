package exergue.review.consequence;

import exergue.model.Coin;
import exergue.review.change.Consequence.Renumbered;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Coins of both catalogues whose numbers are others now, those in a row that shift alike together. */
final class Renumbering {

    private Renumbering() { }

    static List<Renumbered> of(TwoStates states) {
        Map<Integer, Integer> shifted = new TreeMap<>();
        for (Coin coin : states.after().coins()) {
            Optional<Integer> old = states.oldNumberOf(coin.id().value());
            Optional<Integer> now = states.newNumbers().of(coin.id().value());
            if (old.isPresent() && now.isPresent() && !old.equals(now)) {
                shifted.put(old.get(), now.get());
            }
        }
        List<Renumbered> runs = new ArrayList<>();
        shifted.forEach((old, now) -> {
            Renumbered run = runs.isEmpty() ? null : runs.get(runs.size() - 1);
            if (run != null && run.last() == old - 1 && run.to() - run.first() == now - old) {
                runs.set(runs.size() - 1, new Renumbered(run.first(), old, run.to()));
            } else {
                runs.add(new Renumbered(old, old, now));
            }
        });
        return runs;
    }
}
