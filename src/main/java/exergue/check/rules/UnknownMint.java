package exergue.check.rules;

import exergue.check.Rule;
import exergue.check.UnknownId;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.ArrayList;
import java.util.List;

/** A type belongs to a mint that is not declared. */
public final class UnknownMint implements Rule {

    static final Code CODE = new Code("unknown-mint", Severity.ERROR,
            "A type names a mint that is not declared",
            "The mints of mints.yaml, in their order, are the headings of the book. A type of another mint has "
                    + "no heading to stand under.",
            """
                    # types/owl-drachm.yaml; mints.yaml declares lakonthos
                    mint: lakontos
                    """,
            """
                    # types/owl-drachm.yaml
                    mint: lakonthos
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        UnknownId unknown = new UnknownId(CODE, "mint", "mints.yaml", catalogue.mints().keySet());
        List<Finding> faults = new ArrayList<>();
        catalogue.types().forEach(type -> faults.addAll(unknown.unlessDeclared(type.mint(), "mint")));
        return faults;
    }
}
