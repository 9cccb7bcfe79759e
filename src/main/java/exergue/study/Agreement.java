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

    public static Agreement of(Catalogue catalogue) {
        List<Convention> conventions = catalogue.conventions().values().stream().map(Written::value).toList();
        List<TwoHands> pairs = new ArrayList<>();
        for (int i = 0; i < conventions.size(); i++) {
            for (int j = i + 1; j < conventions.size(); j++) {
                TwoHands pair = TwoHands.of(conventions.get(i), conventions.get(j), catalogue.coins());
                if (!pair.isEmpty()) {
                    pairs.add(pair);
                }
            }
        }
        return new Agreement(pairs);
    }

    /** The table, a row for each pair and kind of figure that has something to tell. */
    public List<AgreementRow> rows() {
        return pairs.stream().flatMap(pair -> AgreementRow.of(pair).stream()).toList();
    }

    /** One sentence for each pair, for the methods statement. */
    public List<String> sentences() {
        return pairs.stream().map(AgreementSentence::of).toList();
    }
}
