package exergue.check.rules;

import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** No entry names a find-spot that is declared. */
public final class FindSpotNeverUsed implements Rule {

    static final Code CODE = new Code("find-spot-never-used", Severity.NOTE,
            "A find-spot is declared but no coin was found there",
            "Perhaps the coins found there name another spot by mistake.",
            """
                    # find-spots.yaml, and no coin says “spot: lower-town”
                    lower-town: {name: the lower town}
                    """,
            """
                    find: {spot: lower-town}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        Set<String> used = catalogue.coins().stream().flatMap(coin -> coin.find().stream())
                .map(find -> find.spot().value()).collect(Collectors.toSet());
        return catalogue.findSpots().values().stream()
                .filter(each -> !used.contains(each.id().value()))
                .map(each -> Finding.of(CODE, each.id().place(), each.id().value(),
                        "The find-spot “" + each.id() + "” is declared, but no coin names it.",
                        "Name it in the entries that belong to it, or delete it from find-spots.yaml."))
                .toList();
    }
}
