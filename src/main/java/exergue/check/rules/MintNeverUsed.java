package exergue.check.rules;

import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** No entry names a mint that is declared. */
public final class MintNeverUsed implements Rule {

    static final Code CODE = new Code("mint-never-used", Severity.NOTE,
            "A mint is declared but no type was struck there",
            "A mint without types prints no heading. Perhaps its types name another mint by mistake.",
            """
                    # mints.yaml, and no type says “mint: lakonthos”
                    lakonthos: {name: Lakonthos}
                    """,
            """
                    # in the types that belong to it
                    mint: lakonthos
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        Set<String> used = catalogue.types().stream().map(type -> type.mint().value()).collect(Collectors.toSet());
        return catalogue.mints().values().stream()
                .filter(each -> !used.contains(each.id().value()))
                .map(each -> Finding.of(CODE, each.id().place(), each.id().value(),
                        "The mint “" + each.id() + "” is declared, but no type names it.",
                        "Name it in the entries that belong to it, or delete it from mints.yaml."))
                .toList();
    }
}
