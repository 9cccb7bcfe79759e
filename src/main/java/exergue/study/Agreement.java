package exergue.study;

import exergue.measure.Convention;
import exergue.model.Catalogue;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;

/**
 * How far the hands of a catalogue agree, where they read the same coins.
 *
 * @param pairs every two conventions under which one coin at least was read twice, in the order of conventions.yaml
 */
public record Agreement(List<TwoHands> pairs) {

    public Agreement {
        pairs = List.copyOf(pairs);
    }

    /** Every two hands that have coins in common. */
    public static Agreement of(Catalogue catalogue) {
        List<Convention> conventions = conventions(catalogue);
        SharedCoins shared = SharedCoins.of(catalogue.coins());
        List<TwoHands> pairs = new ArrayList<>();
        for (int i = 0; i < conventions.size(); i++) {
            for (Convention second : conventions.subList(i + 1, conventions.size())) {
                pairs.add(shared.compare(conventions.get(i), second));
            }
        }
        return new Agreement(pairs.stream().filter(pair -> !pair.isEmpty()).toList());
    }

    /** One hand with each of the others: its figures less theirs. */
    public static Agreement of(Catalogue catalogue, String hand) {
        List<Convention> conventions = conventions(catalogue);
        SharedCoins shared = SharedCoins.of(catalogue.coins());
        return new Agreement(conventions.stream().filter(one -> one.id().equals(hand))
                .flatMap(one -> conventions.stream().filter(other -> other != one)
                        .map(other -> shared.compare(one, other)))
                .filter(pair -> !pair.isEmpty()).toList());
    }

    private static List<Convention> conventions(Catalogue catalogue) {
        return catalogue.conventions().values().stream().map(Written::value).toList();
    }

    /** The table, a row for each pair and kind of figure that has something to tell. */
    public List<AgreementRow> rows() {
        return pairs.stream().flatMap(pair -> AgreementRow.of(pair).stream()).toList();
    }
}
