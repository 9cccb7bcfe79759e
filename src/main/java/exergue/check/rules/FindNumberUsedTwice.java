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

/** Two coins bear one find number of one spot. */
public final class FindNumberUsedTwice implements Rule {

    static final Code CODE = new Code("find-number-used-twice", Severity.WARNING,
            "Two coins from one find-spot have the same find number",
            "The find number ties the coin to the records of the excavation. Two coins with one number cannot "
                    + "both be traced to their context.",
            """
                    # coins/lk-0042.yaml and coins/lk-0043.yaml
                    find: {spot: lower-town, number: "LT 211"}
                    """,
            """
                    # coins/lk-0043.yaml
                    find: {spot: lower-town, number: "LT 212"}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        return Doubles.among(catalogue.coins(), FindNumberUsedTwice::markOf).stream()
                .map(FindNumberUsedTwice::fault).toList();
    }

    private static Optional<Doubles.Mark> markOf(Coin coin) {
        return coin.find().flatMap(find -> find.number()
                .filter(number -> !number.value().isBlank())
                .map(number -> new Doubles.Mark("“" + number + "” from “" + find.spot() + "”", number.place())));
    }

    private static Finding fault(Doubles.Pair<Coin> pair) {
        return Finding.of(CODE, pair.mark().place(), "find.number",
                "The find number " + pair.mark().text() + " stands in two entries, “" + pair.firstThing().id()
                        + "” and “" + pair.thing().id() + "”.",
                "Look the number up in the records of the excavation. If both entries are of one coin, delete one of "
                        + "them; if several coins were found together under one number, add what tells them apart, "
                        + "such as “211a”.")
                .withRelated(pair.first().place(), "the first coin with this number");
    }
}
