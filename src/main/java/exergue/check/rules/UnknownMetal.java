package exergue.check.rules;

import exergue.check.Rule;
import exergue.check.UnknownId;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.ArrayList;
import java.util.List;

/** A type is of a metal the house style has no sign for. */
public final class UnknownMetal implements Rule {

    static final Code CODE = new Code("unknown-metal", Severity.ERROR,
            "A type names a metal the house style does not know",
            "The house style says by which sign or word each metal is printed. A metal it does not know cannot "
                    + "be printed.",
            """
                    # types/owl-drachm.yaml
                    metal: sliver
                    """,
            """
                    # types/owl-drachm.yaml
                    metal: silver
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        UnknownId unknown = new UnknownId(CODE, "metal", "house-style.yaml", catalogue.style().metals().keySet());
        List<Finding> faults = new ArrayList<>();
        catalogue.types().forEach(type -> faults.addAll(unknown.unlessDeclared(type.metal(), "metal")));
        return faults;
    }
}
