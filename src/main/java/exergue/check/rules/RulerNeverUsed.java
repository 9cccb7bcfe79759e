package exergue.check.rules;

import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** No entry names a ruler that is declared. */
public final class RulerNeverUsed implements Rule {

    static final Code CODE = new Code("ruler-never-used", Severity.NOTE,
            "A ruler is declared but no type belongs to him",
            "A ruler without types prints no heading. Perhaps his types name another ruler by mistake.",
            """
                    # rulers.yaml, and no type says “ruler: damarchos”
                    damarchos: {name: Damarchos}
                    """,
            """
                    # in the types that belong to him
                    ruler: damarchos
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        Set<String> used = catalogue.types().stream().flatMap(type -> type.ruler().stream())
                .map(ruler -> ruler.value()).collect(Collectors.toSet());
        return catalogue.rulers().values().stream()
                .filter(each -> !used.contains(each.id().value()))
                .map(each -> Finding.of(CODE, each.id().place(), each.id().value(),
                        "The ruler “" + each.id() + "” is declared, but no type names it.",
                        "Name it in the entries that belong to it, or delete it from rulers.yaml."))
                .toList();
    }
}
