package exergue.check.rules;

import exergue.check.Rule;
import exergue.check.UnknownId;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** A coin points to a type that no file describes. */
public final class UnknownType implements Rule {

    static final Code CODE = new Code("unknown-type", Severity.ERROR,
            "A coin names a type that is not described",
            "A coin is printed under its type. Without the type there is no place in the book where it could stand.",
            """
                    # coins/lk-0042.yaml; the type is described in types/owl-drachm.yaml
                    type: owl-drahcm
                    """,
            """
                    # coins/lk-0042.yaml
                    type: owl-drachm
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        UnknownId unknown = new UnknownId(CODE, "type", "types/", typeIds(catalogue));
        List<Finding> faults = new ArrayList<>();
        Map<String, List<Coin>> lost = new TreeMap<>();
        for (Coin coin : catalogue.coins()) {
            if (!unknown.unlessDeclared(coin.type(), "type").isEmpty()) {
                lost.computeIfAbsent(coin.type().value(), any -> new ArrayList<>()).add(coin);
            }
        }
        lost.forEach((type, coins) -> faults.addAll(coins.size() == 1
                ? unknown.unlessDeclared(coins.get(0).type(), "type") : List.of(missing(type, coins))));
        return faults;
    }

    /** Where several coins agree on a type, it is the file of the type that is missing and not a slip in each of them. */
    private static Finding missing(String type, List<Coin> coins) {
        List<Coin> inOrder = coins.stream().sorted(Comparator.comparing(coin -> coin.type().place())).toList();
        String file = "types/" + type + ".yaml";
        List<Finding.Related> others = inOrder.stream().skip(1)
                .map(coin -> new Finding.Related(coin.type().place(), "“" + coin.id() + "” names it too")).toList();
        return new Finding(CODE, inOrder.get(0).type().place(), "type", "There is no " + file + ", and " + coins.size()
                + " coins name the type “" + type + "”.", "Add the file " + file
                + ", or name the right type in the coins.", others, Optional.empty());
    }

    private static Set<String> typeIds(Catalogue catalogue) {
        return catalogue.types().stream().map(type -> type.id().value()).collect(Collectors.toCollection(TreeSet::new));
    }
}
