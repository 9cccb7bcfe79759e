package exergue.check.rules;

import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** No coin points to a type. */
public final class TypeWithoutCoins implements Rule {

    static final Code CODE = new Code("type-without-coins", Severity.NOTE,
            "A type is described but no coin belongs to it",
            "A type without specimens prints an entry with nothing under it. Perhaps its coins name another "
                    + "type by mistake.",
            """
                    # types/owl-drachm.yaml, and no coin says “type: owl-drachm”
                    id: owl-drachm
                    """,
            """
                    # in the coins that belong to it
                    type: owl-drachm
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        Set<String> used = catalogue.coins().stream().map(coin -> coin.type().value()).collect(Collectors.toSet());
        return catalogue.types().stream()
                .filter(type -> !used.contains(type.id().value()))
                .map(type -> Finding.of(CODE, type.id().place(), "id",
                        "No coin belongs to the type “" + type.id() + "”.",
                        "Name it as “type” in the coins that belong to it, or delete its file."))
                .toList();
    }
}
