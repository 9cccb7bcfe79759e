package exergue.check.rules;

import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** No entry names a collection that is declared. */
public final class CollectionNeverUsed implements Rule {

    static final Code CODE = new Code("collection-never-used", Severity.NOTE,
            "A collection is declared but no coin is kept in it",
            "A list of collections should name those whose coins the book has. Perhaps the coins name another "
                    + "collection by mistake.",
            """
                    # collections.yaml, and no coin says “id: museum”
                    museum: {name: Museum of the Coast, sign: MC}
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
        Set<String> used = catalogue.coins().stream().flatMap(coin -> coin.holding().stream())
                .map(holding -> holding.collection().value()).collect(Collectors.toSet());
        return catalogue.collections().values().stream()
                .filter(each -> !used.contains(each.id().value()))
                .map(each -> Finding.of(CODE, each.id().place(), each.id().value(),
                        "The collection “" + each.id() + "” is declared, but no coin names it.",
                        "Name it in the entries that belong to it, or delete it from collections.yaml."))
                .toList();
    }
}
