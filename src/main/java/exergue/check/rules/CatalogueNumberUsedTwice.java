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

/** Two coins are pinned to one catalogue number. */
public final class CatalogueNumberUsedTwice implements Rule {

    static final Code CODE = new Code("catalogue-number-used-twice", Severity.ERROR,
            "Two coins are pinned to the same catalogue number",
            "Readers cite a coin by its catalogue number; a number that two coins share cites neither.",
            """
                    # coins/lk-0042.yaml and coins/lk-0043.yaml
                    number: 17
                    """,
            """
                    # coins/lk-0042.yaml
                    number: 17
                    # coins/lk-0043.yaml
                    number: 18
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        return Doubles.among(catalogue.coins(), CatalogueNumberUsedTwice::markOf).stream()
                .map(CatalogueNumberUsedTwice::fault).toList();
    }

    private static Optional<Doubles.Mark> markOf(Coin coin) {
        return coin.number().map(number -> new Doubles.Mark(number.toString(), number.place()));
    }

    private static Finding fault(Doubles.Pair<Coin> pair) {
        return Finding.of(CODE, pair.mark().place(), "number",
                "The catalogue number " + pair.mark().text() + " is pinned for two coins, “" + pair.firstThing().id()
                        + "” and “" + pair.thing().id() + "”.",
                "Pin another number here, or leave the number out: then the order of the book gives it.")
                .withRelated(pair.first().place(), "the first coin with this number");
    }
}
