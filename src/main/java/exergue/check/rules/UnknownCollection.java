package exergue.check.rules;

import exergue.check.Rule;
import exergue.check.UnknownId;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.ArrayList;
import java.util.List;

/** A coin is kept in a collection that is not declared. */
public final class UnknownCollection implements Rule {

    static final Code CODE = new Code("unknown-collection", Severity.ERROR,
            "A coin names a collection that is not declared",
            "The row of a coin prints the short form of its collection, which collections.yaml gives.",
            """
                    collection: {id: museun, number: "1931.14"}
                    """,
            """
                    collection: {id: museum, number: "1931.14"}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        UnknownId unknown = new UnknownId(CODE, "collection", "collections.yaml", catalogue.collections().keySet());
        List<Finding> faults = new ArrayList<>();
        catalogue.coins().forEach(coin -> coin.holding().ifPresent(
                holding -> faults.addAll(unknown.unlessDeclared(holding.collection(), "collection.id"))));
        return faults;
    }
}
