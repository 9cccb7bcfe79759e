package exergue.check.rules;

import exergue.check.Rule;
import exergue.check.UnknownId;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.ArrayList;
import java.util.List;

/** A type belongs to a ruler who is not declared. */
public final class UnknownRuler implements Rule {

    static final Code CODE = new Code("unknown-ruler", Severity.ERROR,
            "A ruler is named who is not declared",
            "Within a mint the types stand under their rulers, in the order of rulers.yaml.",
            """
                    # types/owl-drachm.yaml; rulers.yaml declares damarchos
                    ruler: damarkos
                    """,
            """
                    # types/owl-drachm.yaml
                    ruler: damarchos
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        UnknownId unknown = new UnknownId(CODE, "ruler", "rulers.yaml", catalogue.rulers().keySet());
        List<Finding> faults = new ArrayList<>();
        catalogue.types().forEach(type -> type.ruler().ifPresent(
                ruler -> faults.addAll(unknown.unlessDeclared(ruler, "ruler"))));
        catalogue.findSpots().values().forEach(spot -> spot.compared().ifPresent(elsewhere -> elsewhere.periods().forEach(
                period -> faults.addAll(unknown.unlessDeclared(period.ruler(), "compared-with.periods")))));
        return faults;
    }
}
