package exergue.check.rules;

import exergue.check.Rule;
import exergue.check.UnknownId;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
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
        catalogue.coins().forEach(coin -> faults.addAll(unknown.unlessDeclared(coin.type(), "type")));
        return faults;
    }

    private static Set<String> typeIds(Catalogue catalogue) {
        return catalogue.types().stream().map(type -> type.id().value()).collect(Collectors.toCollection(TreeSet::new));
    }
}
