package exergue.check.rules;

import exergue.check.Doubles;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import java.util.List;
import java.util.Optional;

/** Two coins bear one number of one collection. */
public final class CollectionNumberUsedTwice implements Rule {

    static final Code CODE = new Code("collection-number-used-twice", Severity.WARNING,
            "Two coins have the same number in the same collection",
            "An inventory number usually names one coin. Two entries with the same number may be one coin "
                    + "catalogued twice, or one of the numbers was copied wrongly.",
            """
                    # coins/lk-0042.yaml and coins/lk-0043.yaml
                    collection: {id: museum, number: "1931.14"}
                    """,
            """
                    # coins/lk-0043.yaml
                    collection: {id: museum, number: "1931.15"}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        return Doubles.among(catalogue.coins(), CollectionNumberUsedTwice::markOf).stream()
                .map(CollectionNumberUsedTwice::fault).toList();
    }

    private static Optional<Doubles.Mark> markOf(Coin coin) {
        return coin.holding().flatMap(holding -> holding.number()
                .filter(number -> !number.value().isBlank())
                .map(number -> new Doubles.Mark(
                        "“" + number + "” of the collection “" + holding.collection() + "”", number.place())));
    }

    private static Finding fault(Doubles.Pair<Coin> pair) {
        return Finding.of(CODE, pair.mark().place(), "collection.number",
                "The number " + pair.mark().text() + " stands in two entries, “" + pair.firstThing().id() + "” and “"
                        + pair.thing().id() + "”.",
                "Look the number up. If both entries are of one coin, delete one of them; if the collection gave "
                        + "several coins one number, add what tells them apart, such as “1931.14a”.")
                .withRelated(pair.first().place(), "the first coin with this number");
    }
}
